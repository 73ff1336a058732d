### מה שסביב המסכים: כפתורים, כותרות, רמזים. מה ששלב, תשובה, תנאי או נייר אומרים נמצא
### בקבצים שליד.

ui-name = Steady
ui-waiting = רגע…
ui-retry = נסו שוב
ui-dismiss = סגירה
ui-save = שמירה
ui-next = הבא
ui-later = אחר כך
ui-no-plate = אין לוחית

## כשאין גישה לליבה, או כשמסך נתקע.
ui-error-no-core = למסכים אין גישה ל־Steady
ui-error-no-core-help = דבר ממה שרשמתם לא אבד. הפעילו את Steady שוב; בדפדפן, פתחו את הכתובת שהוא נותן.
ui-error-screen = המסך הזה נכשל
ui-error-screen-help = דבר ממה שרשמתם לא אבד. נסו שוב; אם זה חוזר, סגרו את Steady ופתחו אותו שוב.

## מי עובד.
ui-technician = השם שלכם
ui-technician-title = מי ליד הרכב?
ui-technician-why = השם שלכם עומד ליד כל מה שתרשמו, ועל הניירות. הוא עוזב את המכשיר הזה רק עם ניירות וקבצים שתעבירו הלאה.
ui-technician-change = הטכנאי: { $name }. החלפה

## רשימת הביקורים.
ui-new-visit = ביקור חדש
ui-search = לוחית, שלדה, בעלים, תאריך
ui-search-only = רק רכבים בדירוג { $word }
ui-found = { $total ->
    [0] אין ביקורים
    [one] ביקור אחד
    [two] שני ביקורים
   *[other] { $total } ביקורים
}
ui-empty = עוד לא נכנס רכב. התחילו ב״ביקור חדש״.
ui-card-still-open = עדיין פתוח מביקור קודם:
ui-nothing-found = אף ביקור לא מתאים. נסו פחות אותיות.
ui-more = עוד
ui-steps-settled = { $settled } מתוך { $steps } שלבים נבדקו{ $open ->
    [0] {""}
    [one] , אחד נשאר פתוח
   *[other] , { $open } נשארו פתוחים
}
ui-repair-torn-down = על השולחן אחרי פירוק
ui-repair-turns-free = המיסב הסתובב חופשי אחרי ההרכבה
ui-repair-checked-again = נבדק שוב אחרי התיקון
ui-outcome-confirmed = אושר מה זה היה
ui-signed = נחתם: { $decision }
ui-language = שפה
ui-theme = ערכת צבעים
ui-theme-system = לפי המכשיר
ui-theme-dark = כהה
ui-theme-daylight = אור יום
ui-versions = גרסה { $version }, כללים ונתונים { $knowledge }
ui-notices = תוכנות צד שלישי והרישיונות שלהן
ui-notices-about = רשימה של כל חלק ב־Steady שאחרים יצרו, ואחריה הרישיונות שלהם, באנגלית.
ui-notices-none = הרשימה לא נמצאת בבנייה הזאת.

## קליטה.
ui-intake = קליטה
ui-layout = איך הרכב נושא את הגל שלו
ui-layout-needed = בחרו אחד מאלה. כל השאר יכול לחכות.
ui-layout-others = מבנה אחר
ui-support-rigid = מוחזק קשיח: שום תנועה ביד אינה מותרת.
ui-support-rubber = מוחזק בטבעת גומי: מעט גמישות היא רגילה.
ui-support-tube = בתוך צינור: אי אפשר לאחוז בו.
ui-seat = מושב המיסב
ui-maker-figure = נתון התנועה של היצרן, מ״מ
ui-complaint-sounds = מה הבעלים מרגיש
ui-complaint = במילים של הבעלים
ui-when = מתי זה קורה
ui-car = הרכב
ui-plate = לוחית רישוי
ui-label = יצרן ודגם
ui-vin = מספר שלדה (VIN)
ui-vin-fits = ספרת הביקורת מתאימה.
ui-vin-differs = ספרת הביקורת לא מתאימה. הביטו שוב; מחוץ לצפון אמריקה זה לא חייב לומר משהו.
ui-vin-not-a-vin = לא מספר שלדה מלא: 17 תווים, בלי I, O ו־Q.
ui-gearbox = תיבת הילוכים
ui-number-unread = לא נקרא כמספר. כתבו ספרות בלבד, בלי סימן לאלפים.
ui-odometer = מד מרחק
ui-unit = יחידה
ui-unit-km = ק״מ
ui-unit-miles = מיילים
ui-unit-rpm = סל״ד
ui-cylinders = צילינדרים
ui-idle-range = תחום הסרק של היצרן, סל״ד
ui-idle-low = מ־
ui-idle-high = עד
ui-owner = הבעלים
ui-owner-name = שם
ui-owner-contact = טלפון או כתובת
ui-start-visit = התחלת הביקור
ui-discard = לזרוק מה שכתבתי כאן

## הבדיקה.
ui-to-visits = לרשימת הביקורים
ui-to-intake = { $name }. פתיחת הקליטה
ui-to-result = { $word }. פתיחת התוצאה
ui-live-rating = דירוג הביקור: { $word }
ui-shaft-line = תחנות לאורך הגל
ui-station = { $name }: { $settled } מתוך { $steps } נבדקו{ $open ->
    [0] {""}
    [one] , אחד נשאר פתוח
   *[other] , { $open } נשארו פתוחים
}, { $word }
ui-all-steps = כל השלבים
ui-locked = נעול
ui-step-where = { $station }, { $at } מתוך { $of }
ui-step-before = השלב הקודם: { $title }
ui-step-after = השלב הבא: { $title }
ui-this-step = השלב הזה
ui-step-unrated = נרשם
ui-show-how = איך עושים
ui-hide-how = הסתרת ההסבר
ui-more-behind = עוד
ui-drawing = ציור: { $words } לחצו כדי לראות אותו גדול.
ui-disputed = שני מכשירים נתנו כאן תשובות שונות. הגרועה מביניהן נחשבת.
ui-elsewhere = לא נספר: { $answer } ({ $by }, { $at }). הרכב נרשם אז עם מבנה אחר או נתון אחר. בדקו שוב.
ui-elsewhere-drop = לבטל את מה שלא נספר
ui-milder = הוקל כי: { $reason }
ui-temperature = בית המיסב קר או חם?
ui-temperature-cold = קר
ui-temperature-warm = חם
ui-temperature-first = בחרו קודם קר או חם
ui-above-first = ענו קודם על השאלה שלמעלה
ui-reading = קריאה ב{ $unit }, { $min } עד { $max }
ui-reading-usual = למשל { $usual }
ui-erase = מחיקת הספרה האחרונה
ui-undo = ביטול
ui-undo-what = { $about ->
    [none] ביטול: { $what }
   *[other] ביטול: { $what }, { $about }
}
ui-undo-nothing = אין מה לבטל
# A refusal behind the name of the field that it is about.
ui-problem-at = { $field }: { $what }
ui-stop = עצרו
ui-reason-title = תשובה של סכנה או אזהרה נעשית קלה יותר. למה?
ui-reason-why = הסיבה שלכם נשארת ביומן, ודוח הממצאים מציג אותה.
ui-reason-ok = רישום עם הסיבה הזאת
ui-leave-as-is = להשאיר כפי שהוא

## התמונה של שלב.
ui-photo-take = תמונה
ui-photo-again = עוד תמונה
ui-photo-sending = שומר…
ui-photo-none = אין תמונה כי
ui-photo-waived = אין תמונה, למה?
ui-photo-why = למה אין תמונה?
ui-photo-own-words = במילים שלכם
ui-photo-because = אין תמונה: { $reason }
ui-photo-of = תמונה שצולמה בשלב: { $title }
ui-photo-at = נשמרה { $when }

## תנאים, סדר, יציאה.
ui-gates-left = { $left ->
    [one] נשאר תנאי אחד. געו בו כשהוא מתקיים.
    [two] נשארו שני תנאים. געו בכל אחד כשהוא מתקיים.
   *[other] נשארו { $left } תנאים. געו בכל אחד כשהוא מתקיים.
}
ui-gates-open = הכול אושר. המשיכו לשלבים.
ui-confirmed = { $by }, { $when }
ui-order-title = איך תרצו לבדוק?
ui-order-why = מנוע עובד מחמם את האגזוז ואת בית המיסב. מתחת לרכב זה אומר לחכות, או כוויות.
ui-order-running-first-about = קודם להקשיב. אחר כך מתחת לרכב, כל עוד הבית חם ואחרי שהאגזוז התקרר. רק בדיקה חמה מסירה חשד של רעש.
ui-order-under-car-first-about = קודם הבדיקה בידיים, קר. אחר כך המנוע, אם לא נמצא דבר מסוכן.
ui-leave-running = כבו את המנוע. קחו איתכם את המפתח או השלט. צאו מהמושב.
ui-leave-running-done = המנוע כבוי
ui-leave-creep = עצרו את הרכב. משכו את הבלם, כבו את המנוע. החזירו את הסדים.
ui-leave-creep-done = הרכב עומד, המנוע כבוי
ui-leave-lift = כלים בחוץ. כולם יוצאים מתחת לרכב. אחר כך, מבחוץ, תיבת ההילוכים חזרה לפארק או להילוך.
ui-leave-lift-done = אין איש מתחת לרכב
ui-leave-why = התנאים של החלק הזה נסגרים איתו. כשחוזרים מאשרים אותם שוב.
ui-leave-still = לפני שיוצאים מתחת לרכב:
ui-left = החלק הזה סגור

## התוצאה.
ui-why = למה
ui-unrated-why = אין דירוג עד שהבדיקה בידיים נעשית. ״עוד לא נבדק״ אין פירושו ״בטוח״.
ui-missing = עוד חסר
ui-next-check = הבדיקה הבאה
ui-go-on = המשך הבדיקה
ui-causes = סיבות, הסבירה ביותר ראשונה
ui-causes-found = סיבות: מה שמאחורי הממצא קודם
ui-found-by-hand = מה נמצא
ui-causes-about = רעש ורעידה מעוררים חשד. רק הבדיקה בידיים קובעת. כמה סיבות יכולות להיות נכונות יחד.
ui-for = בעד
ui-against = נגד
ui-weight-for = { $step }: { $answer } עושה את זה סביר פי { $times }.
ui-weight-against = { $step }: { $answer } עושה את זה פחות סביר פי { $times }.
ui-weight-gauge-with = { $step }, בשעון מדידה: הקריאות שלו סבירות פי { $odds } עם תנועה מאשר בלי.
ui-weight-gauge-without = { $step }, בשעון מדידה: הקריאות שלו סבירות פי { $odds } בלי תנועה מאשר עם.
ui-weight-makes-more = זה עושה את זה סביר פי { $times }.
ui-weight-makes-less = זה עושה את זה פחות סביר פי { $times }.
ui-no-weights = דבר ממה שנענה עד עכשיו אינו בעד או נגד.
ui-road = לידיעה: כשירות לדרך
ui-papers = ניירות
ui-finding = דוח ממצאים
ui-note = דף לבעלים
ui-ledger = יומן

## ניירות ואישור הקבלה.
ui-paper-language = שפת הנייר
ui-sheet = גיליון
ui-sheet-a4 = A4
ui-sheet-us-letter = US Letter
ui-pdf-make = הפקת ה־PDF
ui-pdf-making = מפיק אותו…
ui-pdf-open = פתיחה
ui-pdf-save = שמירת עותק
ui-pdf-where = ניירות שנשמרו עוברים לתיקיית ההורדות.
ui-short-text = טקסט קצר לשליחה
ui-copy = העתקה
ui-copied = הועתק.
ui-copy-by-hand = הטקסט מסומן. העתיקו אותו מכאן.
ui-decision = מה אתם מחליטים
ui-owner-signs = השם שלכם (אפשר להשאיר ריק)
ui-sign-here = חתמו כאן באצבע
ui-pad-empty = שדה חתימה, ריק
ui-pad-signed = שדה חתימה, חתום
ui-pad-clear = ניקוי החתימה
ui-sign = חתימה שקיבלתי את הדף
ui-sign-needs = בחרו אחת מהשלוש וחתמו למעלה.
ui-sign-again = חתימה מחדש
ui-receipt-outdated = מאז החתימה השתנה מה שרשום או הדירוג. הדף יכול לומר עכשיו יותר ממה שנראה אז.
ui-note-hash = הדף הזה: SHA-256 { $hash }

## היומן.
ui-chain-whole = { $entries ->
    [one] רשומה אחת. היומן שלם.
    [two] שתי רשומות. היומן שלם.
   *[other] { $entries } רשומות. היומן שלם.
}
ui-chain-broken = הרישום פגום החל מרשומה { $seq }. משם והלאה הוא אינו מה שנכתב. התייחסו לביקור כלא נבדק, והשאירו את נתוני המכשיר הזה כפי שהם.
ui-ledger-broken = הרישום של הביקור פגום החל מרשומה { $seq }. אל תסתמכו עליו.
ui-ledger-empty = עוד לא נרשם דבר.
ui-ledger-change = { $before }, עכשיו { $now }
ui-ledger-head = גיבוב אחרון: { $head }
ui-reason-was = סיבה: { $reason }
ui-superseded = כבר לא נחשב; רשומה מאוחרת באה במקומו.

ui-rating = דירוג
ui-outcome = איפה הבדיקה עומדת

## המיון, פתוח.
ui-interval = בין { $low } ל־{ $high }
ui-before = לפני כל תשובה: { $before }.
ui-together-for = יחד, התשובות האלה עושות את זה סביר עוד פי { $times }.
ui-together-against = התשובות האלה אומרות בחלקן אותו דבר: יחד הן נספרות פחות פי { $times }.
ui-causes-more = { $count ->
    [one] עוד סיבה אחת
    [two] עוד שתי סיבות
   *[other] עוד { $count } סיבות
}
ui-next-gain = בממוצע זה חוסך בערך { $minutes } דקות של תיקון מיותר או של המתנה.
ui-next-none = אין בדיקה נוספת
ui-turn = אם ״{ $step }״ ייצא ״{ $answer }״, { $cause } יוביל ({ $share }).
ui-judgements = מה תעלה החלטה שגויה
ui-judgements-about = ההפסדים הם שיקול דעת של מוסך, נספרים בדקות. הדירוג שלמעלה הולך לפי הכללים שלו ולא לפי הטבלה הזאת.
ui-judgement-acts = עכשיו { $now }. ההמלצה תשתנה מתחת ל־{ $at }.
ui-judgement-waits = עכשיו { $now }. ההמלצה תשתנה מ־{ $at } ומעלה.
ui-judgement-loss = { $course }: { $minutes ->
    [one] אובדת דקה אחת
    [two] אובדות שתי דקות
   *[other] אובדות { $minutes } דקות
} בממוצע, אם { $loss }.
ui-judgement-alone = המספרים האלה הם שיקול דעת של מוסך בלבד: עוד מעט מדי תוצאות מאושרות.
ui-taught = המספרים האלה נלמדו מ־{ $outcomes } תוצאות מאושרות של המבנה הזה.
ui-opinion = לדעתי זה…
ui-opinion-open = לדעתי זה משהו אחר
ui-opinion-choose = בחירת סיבה
ui-opinion-why = למה
ui-opinion-about = זה עומד בדוח הממצאים ליד המיון ולא משנה אותו.
ui-opinion-was = לדעת { $by }: { $cause }
ui-turned-out = מה התברר
ui-turned-out-about = אחרי פירוק או תיקון: געו בכל סיבה שבאמת הייתה שם. זה מלמד את המיון.
ui-turned-out-choose = מה באמת היה שם
ui-turned-out-by = מי אומר (ריק: { $technician })
ui-turned-out-save = אישור
ui-turned-out-kept = נרשם. זה נספר פעם אחת, גם אם מתקנים אותו שוב ושוב.
ui-turned-out-again = אשרו שוב כדי לתקן; שניהם נשארים ביומן.
ui-calibration = כמה פעמים הסיבות היו נכונות
ui-calibration-about = משווה מה שנאמר על כל סיבה למה שנמצא בפירוק או אחרי התיקון.
ui-outcomes-count = { $outcomes ->
    [0] עוד אין תוצאה מאושרת
    [one] תוצאה מאושרת אחת
    [two] שתי תוצאות מאושרות
   *[other] { $outcomes } תוצאות מאושרות
}
ui-judgement-alone-page = המספרים עדיין נשענים על שיקול דעת בלבד. המספרים של מבנה לומדים החל מ־{ $enough } תוצאות.
ui-layout-taught = { $layout }: { $outcomes } תוצאות; המספרים שלו נלמדים מהן.
ui-layout-not-taught = { $layout }: { $outcomes } מתוך { $enough } תוצאות.
ui-reliability = תחזית ותוצאה
ui-reliability-about = מכל הסיבות שנאמר עליהן בערך 70%, בערך 70% אמורות להתברר כנכונות. על הקו המקווקו זה מתאים.
ui-reliability-drawing = תרשים: לרוחב התחזית, לגובה כמה פעמים כך היה; המספרים בטבלה שמתחת.
ui-said = תחזית
ui-was = נמצא
ui-count = מספר
ui-share = { $share }%
ui-scores = ציונים, נמוך טוב יותר
ui-scores-about = על פני { $forecasts } הסתברויות: אחת לכל סיבה וביקור.
ui-brier = ציון Brier
ui-brier-calibration = מתוכו כיול: נאמר גבוה או נמוך מדי
ui-brier-refinement = מתוכו הבחנה: מה שהקבוצות לא הבדילו
ui-brier-grouping = מתוכו קיבוץ: הבדלים בתוך קבוצה
ui-log-score = ציון לוגריתמי
ui-log-score-base = אותו דבר לפי שכיחות בלבד
ui-better-than-base = המיון אומר יותר ממה שהשכיחויות של המוסך היו אומרות.
ui-no-better-than-base = עד עכשיו המיון לא אומר יותר ממה שהשכיחויות של המוסך היו אומרות.
ui-weak-signs = סימנים חלשים
ui-weak-signs-about = סימנים שהיו שכיחים בערך באותה מידה בלי הסיבות שלהם כמו איתן.
ui-weak-share = { $part } מתוך { $whole }
ui-weak-with = עם אחת מסיבותיו: { $share }
ui-weak-without = בלי אף אחת מהן: { $share }

## שעון המדידה.
ui-gauge = מדידה בשעון
ui-gauge-back = חזרה אל: { $step }
ui-gauge-about = ידיים בלבד, בלי מוט: דחפו, קראו, משכו, קראו. הזינו בכל פעם את כל התנועה. הדקו או הבריגו את בסיס השעון לבית עצמו: אלומיניום לא מחזיק מגנט. שעון מכריע ״יש ספק״; הוא לעולם לא מבטל מה שיד הרגישה.
ui-gauge-readings = כל התנועה, מדחיפה למשיכה
ui-gauge-reading = קריאה { $at }
ui-gauge-more = עוד קריאה
ui-gauge-place = איפה השעון עומד
ui-gauge-at-bearing = על המיסב
ui-gauge-on-shaft = במקום אחר על הגל
ui-lever = איזה מיסב זז, וסביב מה הגל נוטה
ui-lever-near = מתוך זוג, זז המיסב הקרוב לשעון
ui-lever-far = מתוך זוג, זז המיסב הרחוק מהשעון
ui-lever-either = מתוך זוג, לא ידוע איזה
ui-lever-joint = מיסב אחד לבדו
ui-lever-about-pair = מיסב רופף בזוג מטה את הגל סביב האחר, לא סביב המפרק הרחוק. אם לא ידוע איזה: מחשבים את שניהם, והוכחה דורשת את שניהם.
ui-lever-about-joint = מיסב אחד לבדו: הגל נוטה סביב המפרק הרחוק שלו.
ui-lever-apart = ממיסב למיסב, מ״מ
ui-lever-out = מהמיסב הקרוב לשעון, מ״מ
ui-lever-joint-bearing = מהמפרק למיסב, מ״מ
ui-lever-joint-gauge = מהמפרק לשעון, מ״מ
ui-gauge-mark = בלי נתון יצרן, המרווח של המיסב עצמו הוא אמת המידה. זה לא גבול רשמי.
ui-gauge-bore = קדח המיסב, מ״מ
ui-gauge-group = קבוצת מרווח
ui-gauge-group-none = לא ידוע
ui-gauge-save = רישום הקריאות
ui-gauge-plot = קריאות לאורך קו: עיגולים הם קריאות, הדסקית היא הממוצע עם התחום שלו, הקו הזקוף הוא הגבול.
ui-gauge-plot-about = עיגולים: קריאות. דסקית וקו: ממוצע ותחום של 95%. קו זקוף: גבול; בתוך הרצועה האפורה דבר לא מוכח.
ui-gauge-limit = גבול
ui-trend-plot = תנועה לאורך ביקורים: נקודות עם התחומים שלהן, קו ישר דרכן, הגבול בקו שבור.
ui-trend-about = נקודות: ביקורי הרכב הזה, כל אחד עם התחום שלו. קו: המגמה. קו שבור: גבול.
ui-trend-first = לפני { $days } ימים
ui-trend-today = היום

## השולחן.
ui-bench = שולחן
ui-bench-about = אחרי הפירוק. הקדח קובע אם מיסבים חדשים לבדם יחזיקו.
ui-bench-about-rubber = אחרי הפירוק. תמיכת גומי מוחלפת בשלמותה, עם המיסב שלה. מדדו קדח רק היכן שהיצרן מתיר לשמור את הבית.
ui-bench-verdict = פסיקה
ui-done = נעשה
ui-bench-next = הבא: { $part }
ui-bench-complete = כל מה שנדרש רשום. אפשר להפיק את דוח התיקון.
ui-bench-not-asked = עוד לא נדרש
ui-bench-no-plan = מדדו קודם את הקדח כפי שנמצא: התוכנית מחושבת ממנו.
ui-bench-clean = הסכין נגעה בכל ההיקף. לא דרוש עוד מעבר.
ui-bench-cut-more = לחרוט בכל זאת עוד מעבר
ui-measure-again = מדידה חוזרת
ui-photo-back-bench = חזרה לשולחן
ui-bench-look = מבט על הבית
ui-look-cracked = יש סדק, או אוזן שבורה?
ui-look-ring-turned = סימנים מבריקים או חרוצים של מיסב שהסתובב בתוך הקדח שלו?
ui-look-yes = כן
ui-look-no = לא
ui-look-wall = הדופן הקטנה ביותר שמותר להשאיר, מ״מ
ui-bench-found = הקדח כפי שנמצא
ui-bench-skim = תוכנית חריטה ומעברים
ui-bench-finished = הקדח בסיום
ui-bench-fit = אפיצות
ui-bench-ring = אחרי ההרכבה: סיבוב המיסב ביד
ui-bench-ring-about = סובבו את הגל ביד במיסב שלו, לאט, סיבוב שלם. הוא חייב להסתובב חופשי: מיסב שנכבש במושב אליפטי מסתובב בקושי ומתקלקל מוקדם.
ui-bench-notes = ברגים ומומנטים
ui-bench-notes-about = ברגים חדשים, במומנט של היצרן. רשמו במה השתמשתם ומאיפה המספר.
ui-bench-note = הערה
ui-bench-passes = מעברים שנחרטו
ui-bench-after-pass = אחרי מעבר { $pass }
ui-bench-pass = מעבר { $pass }: { $contact }
ui-bench-diameter = קוטר אחרי מעבר { $pass }, מ״מ (אפשר להשאיר ריק)
ui-bench-contact = מעבר { $pass } נחרט. איפה הסכין נגעה?
ui-bench-photo-at = תמונה { $at } מתוך { $of } של העבודה הזאת
ui-bench-photo-more = צילום עוד תמונה
ui-contact-none = בשום מקום
ui-contact-partly = במקומות
ui-contact-all-round = בכל ההיקף
ui-ring-free = חופשי
ui-ring-stiff = קשה
ui-ring-rough = מחוספס
ui-bore-kind = איך מודדים
ui-bore-kind-two-point = שתי נקודות
ui-bore-kind-three-point = שלוש נקודות
ui-bore-kind-dial = סריקה בשעון
ui-bore-kind-coordinates = קואורדינטות
ui-bore-about-two-point = קטרים בין שני מגעים נגדיים. לא רואה שלוש, חמש או כל מספר אי־זוגי של אונות.
ui-bore-about-three-point = קטרים בשלושה מגעים. לא רואה אליפסה.
ui-bore-about-dial = שעון שסורק סביב שולחן מסתובב, עם הסימן והאפס שלו.
ui-bore-about-coordinates = נקודות ממכונת מדידה, x ו־y מציר הבסיס: מודבקות כאן, או כקובץ.
ui-bore-unit-mm = מ״מ
ui-bore-unit-um = מיקרון
ui-bore-unit-in = אינץ׳
ui-bore-unit-thou = אלפית אינץ׳
ui-bore-resolution = הצעד הקטן ביותר
ui-bore-mpe = השגיאה הגדולה ביותר המותרת
ui-bore-repeatability = פיזור, אם נוסה
ui-bore-wall = הדופן הדקה ביותר, מ״מ, אם נמדדה
ui-bore-seat = רוחב המושב, מ״מ
ui-bore-wall-error = הדופן נקראת בדיוק של ± מ״מ
ui-bore-turn = הזוויות נספרות
ui-bore-turn-clockwise = עם כיוון השעון
ui-bore-turn-counter = נגד כיוון השעון
ui-bore-zero-diameter = הקוטר באפס
ui-bore-zero = האפס
ui-bore-zero-set = כוון לטבעת במידה הזאת
ui-bore-zero-nominal = רק הונח
ui-bore-higher = קריאה גבוהה יותר היא
ui-bore-higher-wider = רחב יותר
ui-bore-higher-narrower = צר יותר
ui-bore-angles = זוויות
ui-bore-depths = עומקים
ui-bore-depth = עומק, מ״מ
ui-bore-at-depth = בעומק { $depth }
ui-bore-filled = הוזנו { $done } מתוך { $all } קריאות
ui-bore-points = נקודות, אחת בשורה: { "\u2066x;y\u2069" } או { "\u2066depth;x;y\u2069" }
ui-bore-pasted = הודבקו { $done } שורות
ui-bore-save = רישום הקדח הזה
ui-bore-file = או בחירת קובץ
ui-polar = הדופן בעומק { $depth }, הסטייה מעיגול מצוירת גדולה מהמציאות
ui-polar-scale = הסטייה מצוירת פי { $times }. מקווקו: עיגול.
ui-polar-clockwise = הזוויות נספרות עם כיוון השעון.
ui-polar-counter = הזוויות נספרות נגד כיוון השעון.
ui-polar-flagged = מוקף: לא מתאים לשכניו; קראו אותו שוב.
ui-polar-mirrored = חלול: מצויר מהקריאה שמנגד, לא נקרא כאן.
ui-polar-unread = פתוח: לא נקרא. מה שם לא ידוע.
ui-skim-picture = אחרי מעבר { $pass }, הסכין נגעה ב־{ $share }% מהטבעת
ui-skim-pass = מעבר { $pass } מתוך { $of }.
ui-skim-touched = הסכין נגעה ב־{ $share }% מהטבעת.
ui-skim-clean = נקי בכל ההיקף.
ui-skim-diameter = קוטר { $diameter }.
ui-skim-wall = דופן שנותרת: { $wall }.
ui-skim-wall-thin = הדופן דקה מדי: עצרו.
ui-skim-before = המעבר הקודם
ui-skim-after = המעבר הבא
ui-skim-rings = טבעות מבחוץ פנימה: בעומק { $depths }. עבה: הסכין נגעה.
ui-fit-about = הכול במ״מ, אי־ודאויות במיקרון. מידה שנמדדה גוברת על דרגה.
ui-fit-bearing = המיסב
ui-fit-seat = המושב
ui-fit-sleeve = התותב
ui-fit-sleeve-material = חומר התותב
ui-fit-sleeved = עם תותב
ui-fit-measured = הקדח כפי שנמדד כאן: { $diameter } מ״מ ± { $expanded } מיקרון
ui-fit-unknown = לא ידוע
ui-fit-bearing-od = קוטר חיצוני, נקוב
ui-fit-bearing-bore = קדח
ui-fit-bearing-width = רוחב
ui-fit-od = קוטר חיצוני, נמדד
ui-fit-od-u = אי־הוודאות שלו, מיקרון
ui-fit-group = קבוצת מרווח
ui-fit-class = דרגת קדח
ui-fit-bore = קדח המושב, נמדד
ui-fit-bore-u = אי־הוודאות שלו, מיקרון
ui-fit-housing = חומר הבית
ui-fit-housing-od = קוטר חיצוני של הבית
ui-fit-sleeve-od = קוטר חיצוני של התותב
ui-fit-sleeve-od-u = אי־הוודאות שלו, מיקרון
ui-fit-housing-bore = קדח הבית לתותב
ui-fit-housing-bore-u = אי־הוודאות שלו, מיקרון
ui-fit-temp-low = הטמפרטורה הנמוכה ביותר בשימוש, מעלות צלזיוס
ui-fit-temp-high = הטמפרטורה הגבוהה ביותר בשימוש, מעלות צלזיוס
ui-fit-save = חישוב האפיצות
