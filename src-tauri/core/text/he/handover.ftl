### העברת ביקורים: קבצים למכשיר אחר, מחיקה, גיבויים. סירובים כמו ב־errors.ftl.

## סירובים של קובץ העברה.
error-handover-unknown = זה אינו קובץ העברה של Steady
error-handover-unknown-help = בחרו את קובץ { "\u2066.steady\u2069" } כפי שנוצר. קובץ שנפרס ונארז שוב לא נחשב. דבר לא נקלט.
error-handover-cut-short = קובץ ההעברה קטוע
error-handover-cut-short-help = העתיקו אותו שוב מהמקום שבו נוצר, או בקשו להפיק אותו מחדש. דבר לא נקלט.
error-handover-newer = קובץ ההעברה נוצר על ידי Steady חדש יותר
error-handover-newer-help = התקינו כאן את הגרסה החדשה, ואז קלטו את הקובץ. לא נגעו בנתונים שכאן.
error-handover-changed = קובץ ההעברה שונה אחרי שנוצר
error-handover-changed-help = אל תסמכו על העותק הזה. בקשו להפיק את הקובץ מחדש במכשיר שממנו בא. דבר לא נקלט.
error-handover-signature = החתימה של קובץ ההעברה לא מתאימה
error-handover-signature-help = אל תסמכו על העותק הזה. בקשו להפיק את הקובץ מחדש במכשיר שממנו בא. דבר לא נקלט.
error-handover-part-missing = חסר חלק מקובץ ההעברה
error-handover-part-missing-help = בקשו להפיק את הקובץ מחדש במכשיר שממנו בא. דבר לא נקלט.
error-handover-part-extra = בקובץ ההעברה יש משהו שלא שייך אליו
error-handover-part-extra-help = אל תסמכו על העותק הזה. בקשו להפיק את הקובץ מחדש במכשיר שממנו בא. דבר לא נקלט.
error-handover-part-name = קובץ ההעברה מציין חלק שאין באף ביקור
error-handover-part-name-help = אל תסמכו על הקובץ הזה. המספר אומר איזה חלק ברשימה שלו זה. דבר לא נקלט.
error-handover-too-large = קובץ ההעברה גדול מדי
error-handover-too-large-help = קובץ מחזיק עד 4 ג׳יגה־בייט, ואף טקסט ארוך מהשדה שלו. העבירו פחות ביקורים בבת אחת; דבר לא נקלט.
error-handover-chain = יומן בקובץ ההעברה אינו שלם
error-handover-chain-help = אל תסמכו על העותק הזה. בקשו להפיק את הקובץ מחדש במכשיר שממנו בא. דבר לא נקלט.
error-handover-forked = יומן של מכשיר ממשיך אחרת כאן ובקובץ
error-handover-forked-help = תיקיית נתונים הועתקה ושימשה פעמיים בשם אחד. שמרו את שני העותקים; אף אחד מהם לא שונה. מעכשיו השתמשו רק באחת משתי התיקיות; מה שיש באחרת על הביקור הזה נקרא שם.
error-handover-photo = תמונה בקובץ ההעברה אינה כפי ש־Steady שומר תמונות
error-handover-photo-help = אל תסמכו על הקובץ הזה. דבר לא נקלט.
error-file-changed = הקובץ השתנה בזמן שנשאלתם עליו
error-file-changed-help = דבר לא נקלט. ייבאו אותו שוב וקראו מחדש מה ישתנה.
error-handover-unreadable = אי אפשר לקרוא את הקובץ
error-handover-unreadable-help = בדקו שהוא נמצא שם ושמותר לכם לקרוא אותו. דבר לא נקלט.
error-handover-unwritable = אי אפשר לכתוב את קובץ ההעברה
error-handover-unwritable-help = ציינו מקום אחר שמותר לכם לכתוב בו, או פנו מקום.

## סירובים מסביב.
error-visit-erased = הביקור נמחק במכשיר הזה
error-visit-erased-help = הבעלים ביקש זאת, והוא נשאר מחוק כאן. דבר לא נקלט ולא יצא.
error-erase-word-differs = מילת האישור לא מתאימה
error-erase-word-differs-help = חזרו על לוחית הרישוי של הביקור, או על הקטע האחרון של המזהה שלו. דבר לא נמחק.
error-chain-broken = יומן הביקור שבור
error-chain-broken-help = אי אפשר להעביר אותו כשלם. השאירו את נתוני המכשיר הזה כפי שהם, והשתמשו בגיבוי מקודם.
error-nothing-to-export = אין ביקור להעביר
error-nothing-to-export-help = רשמו קודם ביקור, או ציינו תיקיית נתונים אחרת.
error-knowledge-not-kept = הביקור הזה מוין לפי ידע שאינו שמור כאן
error-knowledge-not-kept-help = הביטו בו בתיקיית הנתונים שמיינה אותו, או ציינו גרסה אחרת.
error-nothing-to-salvage = אי אפשר לקרוא דבר במסד הנתונים הזה
error-nothing-to-salvage-help = ציינו את steady.db של תיקייה שהועברה הצידה. הוא הושאר כפי שהוא.

## על המסכים.
ui-handover = העברה
ui-handover-about = קובץ עם היומן והתמונות של הביקור, למכשיר אחר עם Steady. הוא חתום, ועותק ששונה מסורב שם.
ui-handover-make = יצירת הקובץ
ui-handover-making = יוצר אותו…
ui-handover-save = שמירת הקובץ
ui-handover-where = קבצים שנשמרו עוברים לתיקיית ההורדות.
ui-handover-share = שליחת הקובץ
ui-handover-size = { $size } מגה־בייט
ui-import = קליטת ביקורים ממכשיר אחר
ui-import-about = בחרו קובץ { "\u2066.steady\u2069" }, או גררו אותו לכאן. ביקורים שכבר כאן גדלים במה שחדש; דבר לא נדרס.
ui-import-choose = בחירת קובץ
ui-import-sending = קורא אותו… { $percent }%
ui-import-taking = בודק וקולט…
ui-import-done = { $taken ->
    [0] כל מה שבקובץ כבר היה כאן.
    [one] ביקור אחד נקלט.
    [two] שני ביקורים נקלטו.
   *[other] { $taken } ביקורים נקלטו.
}
ui-import-unchanged = { $unchanged ->
    [one] ביקור אחד כבר היה כאן.
    [two] שני ביקורים כבר היו כאן.
   *[other] { $unchanged } ביקורים כבר היו כאן.
}
ui-import-erased = { $erased ->
    [one] ביקור אחד נמחק כאן ונשאר מחוק.
    [two] שני ביקורים נמחקו כאן ונשארים מחוקים.
   *[other] { $erased } ביקורים נמחקו כאן ונשארים מחוקים.
}
ui-erase-visit = מחיקת הביקור הזה
ui-erase-visit-about = אם הבעלים רוצה שייעלם. היומן והתמונות של הביקור מוסרים מהמכשיר הזה לתמיד, וקובץ שייקלט אחר כך לא מחזיר אותם. ניירות וקבצים שנשמרו או נשלחו קודם נשארים.
ui-erase-visit-word = לאישור, הקלידו { $word }
ui-erase-visit-now = מחיקה לתמיד
