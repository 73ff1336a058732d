### מכשירים והמפתחות שלהם: מי כתב מה, על מי לסמוך, מה קובץ מביא. סירובים כמו ב־errors.ftl.

## סירובים.
error-key-unreadable = אי אפשר לקרוא את המפתח של המכשיר הזה
error-key-unreadable-help = הוא דרוש כדי לחתום על מה שנרשם. העבירו את תיקיית הנתונים הזאת הצידה, ושחזרו את הגיבוי האחרון שלה לתיקייה חדשה.
error-handover-before-signatures = קובץ ההעברה נוצר לפני שרשומות נחתמו
error-handover-before-signatures-help = עדכנו את Steady במכשיר שממנו הוא בא, והפיקו שם את הקובץ מחדש. דבר לא נקלט.
error-handover-unproven = לא מוכח שרשומה בקובץ ההעברה היא של מי שכתב אותה
error-handover-unproven-help = אל תסמכו על העותק הזה. בקשו להפיק את הקובץ מחדש במכשיר שכתב את הביקור. דבר ממנו לא נקלט.
error-handover-unsigned = בקובץ ההעברה יש רשומות מלפני שהיו חתימות
error-handover-unsigned-help = איש לא יכול להוכיח מי כתב אותן, ולכן הן נקלטות רק מגיבוי משלכם. דבר מהביקור לא נקלט.
error-handover-own-name = בקובץ ההעברה יש רשומות בשם המכשיר הזה שאין בו
error-handover-own-name-help = המכשיר הזה לא מביא דבר לעצמו. אם תיקיית הנתונים שלו הועתקה או הוחזרה ליום קודם, שחזרו את הגיבוי האחרון שלה; אם לא, אל תסמכו על הקובץ. דבר מהביקור לא נקלט.
error-handover-retired = בקובץ ההעברה יש רשומות חדשות של מכשיר שהוצא כאן משימוש
error-handover-retired-help = מכשיר שאבד עלול להיות בידיים אחרות. אם נמצא, החזירו אותו בהגדרות, מכשירים, וקלטו את הקובץ פעם נוספת. דבר מהביקור לא נקלט.
error-handover-ahead = בקובץ ההעברה יש רשומות מתאריך רחוק בעתיד
error-handover-ahead-help = השוו תאריך ושעה בשני המכשירים. כוונו את השגוי, וקלטו את הקובץ שוב כשהתאריך ההוא יגיע. דבר מהביקור לא נקלט.
error-handover-opened-twice = ביקור בקובץ ההעברה הוא כאן ביקור אחר
error-handover-opened-twice-help = שני מכשירים אומרים כל אחד שפתח אותו, וזה לא ייתכן. אם זה שכאן בא עם ייבוא שאינכם סומכים עליו, בטלו קודם את הייבוא ההוא. דבר מהביקור לא נקלט.
error-unknown-device = המכשיר הזה לא מוכר כאן
error-unknown-device-help = פתחו שוב הגדרות, מכשירים. דבר לא השתנה.
error-code-differs = הקוד אינו של המכשיר
error-code-differs-help = קראו אותו עוד פעם מהמסך של המכשיר השני, בהגדרות, מכשירים. אם הוא עדיין שונה, אל תסמכו על מה שבא משם. דבר לא אושר.
error-device-name-too-long = שם המכשיר ארוך מדי
error-device-name-too-long-help = עד 60 תווים. דבר לא השתנה.
error-unknown-import = הייבוא הזה לא מוכר כאן, או שכבר בוטל
error-unknown-import-help = פתחו שוב הגדרות, מכשירים. דבר לא השתנה.
error-handover-held-back = חלק מהביקור הושמט
error-handover-held-back-help = הרישומים האחרונים שלו הם ממכשיר שהוצא כאן משימוש, או נושאים תאריך רחוק בעתיד. כל השאר מהביקור נקלט, ונחשב.
error-handover-milder = מה שביקור אומר היה משתנה בידי מכשיר שאיש כאן לא אישר
error-handover-milder-help = הביטו בקוד שלו בהגדרות, מכשירים במכשיר שכתב אותו, והשוו אותו כאן קודם; אחר כך קלטו שוב את הקובץ. עד אז הדירוג נשאר כפי שהוא. דבר מהביקור לא נקלט.
error-handover-writers = בקובץ ההעברה כתבו יותר מכשירים ממה שיש לאיזשהו מוסך
error-handover-writers-help = אל תסמכו עליו, אלא אם מישהו שאתם מכירים יכול לומר איך נוצר. דבר מהביקור לא נקלט.
error-no-device-in-photo = לא נמצא קוד של מכשיר בתמונה
error-no-device-in-photo-help = פתחו הגדרות, מכשירים במכשיר השני, הציגו בו את קוד ה־QR שלו, מלאו בו חצי תמונה, ונסו שוב; או השוו את הספרות. דבר לא אושר.

## מה מוכח, בדוח הממצאים ובדף.
field-signed = הוכחה
signed-this-device = { $entries ->
    [one] רשומה אחת חתומה על ידי המכשיר הזה.
    [two] שתי רשומות חתומות על ידי המכשיר הזה.
   *[other] { $entries } רשומות חתומות על ידי המכשיר הזה.
}
signed-confirmed = { $entries ->
    [one] רשומה אחת חתומה על ידי { $device }, מכשיר מאושר.
    [two] שתי רשומות חתומות על ידי { $device }, מכשיר מאושר.
   *[other] { $entries } רשומות חתומות על ידי { $device }, מכשיר מאושר.
}
signed-not-confirmed = { $entries ->
    [one] רשומה אחת חתומה על ידי { $device }, מכשיר שעוד לא אושר.
    [two] שתי רשומות חתומות על ידי { $device }, מכשיר שעוד לא אושר.
   *[other] { $entries } רשומות חתומות על ידי { $device }, מכשיר שעוד לא אושר.
}
signed-retired = { $entries ->
    [one] רשומה אחת חתומה על ידי { $device }, מכשיר שכבר אינו בשימוש.
    [two] שתי רשומות חתומות על ידי { $device }, מכשיר שכבר אינו בשימוש.
   *[other] { $entries } רשומות חתומות על ידי { $device }, מכשיר שכבר אינו בשימוש.
}
signed-before-signatures = { $entries ->
    [one] רשומה אחת מלפני שהיו חתימות.
    [two] שתי רשומות מלפני שהיו חתימות.
   *[other] { $entries } רשומות מלפני שהיו חתימות.
}
unknown-device = { $entries ->
    [one] רשומה אחת באה ממכשיר שלא אושר כאן.
    [two] שתי רשומות באו ממכשיר שלא אושר כאן.
   *[other] { $entries } רשומות באו ממכשיר שלא אושר כאן.
}
unknown-unsigned = { $entries ->
    [one] רשומה אחת נכתבה לפני שהיו חתימות. דבר לא מוכיח מי כתב אותה.
    [two] שתי רשומות נכתבו לפני שהיו חתימות. דבר לא מוכיח מי כתב אותן.
   *[other] { $entries } רשומות נכתבו לפני שהיו חתימות. דבר לא מוכיח מי כתב אותן.
}
note-proven = כל חלק של הרישום הזה חתום על ידי מכשיר שלנו ונשאר כפי שנכתב.
note-device = חלק מהרישום הזה בא ממכשיר שעוד לא אישרנו כשלנו.
note-unsigned = חלק מהרישום הזה ישן מכדי להיות חתום. איננו יכולים להוכיח מי כתב אותו.

## על המסכים.
ui-devices = מכשירים
ui-devices-about = כל מכשיר חותם על מה שנכתב בו. השוו פעם אחת את הקוד שלו, ויהיה ידוע שמה שבא ממנו הוא שלו.
ui-this-device = המכשיר הזה
ui-this-device-about = הראו את הקוד הזה למי שמשווה אותו במכשיר אחר, או הקריאו אותו.
ui-other-devices = מכשירים אחרים
ui-other-devices-none = עוד אין. מכשיר מופיע כאן אחרי שנקלט ממנו משהו.
ui-device-unnamed = מכשיר בלי שם
ui-device-met = נראה לראשונה: { $when }
ui-trust-this-device = המכשיר הזה
ui-trust-confirmed = מאושר
ui-trust-not-confirmed = עוד לא אושר
ui-trust-retired = הוצא משימוש: דבר חדש לא נקלט ממנו
ui-trust-before-signatures = מלפני שהיו חתימות
ui-from-confirmed = נכתב במכשיר { $device }
ui-from-not-confirmed = ממכשיר שעוד לא אושר
ui-from-retired = ממכשיר שהוצא משימוש
ui-from-before-signatures = נכתב לפני שהיו חתימות
ui-compare = השוואת הקוד שלו
ui-compare-about = פתחו במכשיר השני הגדרות, מכשירים. האם ״המכשיר הזה״ מראה שם אותו קוד, ספרה אחר ספרה?
ui-compare-same = אותו קוד
ui-compare-differs = קוד שונה
ui-compare-differs-told = אם כך זה לא בא מהמכשיר שלפניכם. אל תסמכו עליו. דבר לא אושר.
ui-device-qr = הצגה כקוד QR
ui-device-qr-of = קוד QR של המפתח של המכשיר הזה
ui-device-qr-about = מכשיר אחר סורק אותו בהגדרות, מכשירים, במקום להשוות ספרות.
ui-compare-scan = סריקת קוד ה־QR שלו
ui-compare-scanning = מחפש את הקוד שלו…
ui-device-take-over = המכשיר הזה בא במקומו
ui-device-take-over-about = לטלפון שלכם שאבד או הוחלף, ושהגיבוי שלו נקלט כאן. מה שכתב נחשב מאושר; דבר חדש לא נקלט ממנו.
ui-device-name = שם המכשיר
ui-device-name-keep = שמירת השם
ui-device-retire = הוצאה משימוש
ui-device-retire-about = למכשיר שאבד או הוחלף. מה שכאן נשאר; דבר חדש לא נקלט ממנו.
ui-device-reset = להתחיל איתו מחדש
ui-device-reset-about = הוא נחשב כלא מאושר, כמו כשנראה לראשונה. מה שהוחלט קודם נשאר כתוב.
ui-decided = מה הוחלט
ui-decided-confirmed = אושר על ידי { $by }, { $when }
ui-decided-named = נקרא ״{ $name }״ על ידי { $by }, { $when }
ui-decided-retired = הוצא משימוש על ידי { $by }, { $when }
ui-decided-reset = התחילו איתו מחדש: { $by }, { $when }
ui-imports = מה שנקלט
ui-imports-none = עוד לא נקלט קובץ.
ui-import-brought = { $visits ->
    [one] ביקור אחד, { $when }
    [two] שני ביקורים, { $when }
   *[other] { $visits } ביקורים, { $when }
}
ui-import-was-taken-back = בוטל: { $when }
ui-import-back = ביטול הייבוא הזה
ui-import-back-about = מה שהביא יוצא שוב, והביקורים שלו נקראים כמו קודם. ביקור שהמכשיר הזה המשיך בו נשאר כפי שהוא.
ui-import-back-now = לבטל
ui-import-gone = { $visits ->
    [one] ביקור אחד יצא שוב מהרשימה.
    [two] שני ביקורים יצאו שוב מהרשימה.
   *[other] { $visits } ביקורים יצאו שוב מהרשימה.
}
ui-import-restored = { $visits ->
    [one] ביקור אחד נקרא כמו קודם.
    [two] שני ביקורים נקראים כמו קודם.
   *[other] { $visits } ביקורים נקראים כמו קודם.
}
ui-import-stayed = { $visits ->
    [one] ביקור אחד נשאר: המכשיר הזה המשיך בו.
    [two] שני ביקורים נשארים: המכשיר הזה המשיך בהם.
   *[other] { $visits } ביקורים נשארים: המכשיר הזה המשיך בהם.
}
ui-preview = לקלוט את זה?
ui-preview-looking = בודק מה זה ישנה…
ui-preview-made = נוצר { $when }, לפי השעון של המכשיר ההוא
ui-preview-brings = { $entries ->
    [one] הוא מביא רשומה חדשה אחת.
    [two] הוא מביא שתי רשומות חדשות.
   *[other] הוא מביא { $entries } רשומות חדשות.
}
ui-preview-mends = { $entries ->
    [one] רשומה אחת שפגומה כאן תהיה שלמה שוב.
    [two] שתי רשומות שפגומות כאן יהיו שלמות שוב.
   *[other] { $entries } רשומות שפגומות כאן יהיו שלמות שוב.
}
ui-preview-nothing = כל מה שבו כבר כאן.
ui-preview-is-new = חדש כאן
ui-preview-milder = הדירוג שלו יהפוך קל יותר
ui-preview-now = עכשיו
ui-preview-then = אחר כך
ui-preview-apart = { $visits ->
    [one] ביקור אחד מהקובץ נשאר בחוץ:
    [two] שני ביקורים מהקובץ נשארים בחוץ:
   *[other] { $visits } ביקורים מהקובץ נשארים בחוץ:
}
ui-preview-take = קליטה
ui-preview-leave = להשאיר
ui-preview-left = דבר לא נקלט.
