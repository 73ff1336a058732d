### תמונות: סימונים, זוגות, תמונות שצולמו בינתיים, הקוד למסירת טקסט. סירובים כמו ב־errors.ftl.

## סירובים.
error-photo-heic = התמונה היא HEIC, ואי אפשר לקרוא אותה כאן
error-photo-heic-help = כוונו את המצלמה ל־JPEG (״התואם ביותר״) וצלמו שוב, או בחרו עותק JPEG שלה.
error-photo-not-of-step = התמונה הזאת לא שייכת לשלב
error-photo-not-of-step-help = פתחו את השלב מחדש ובחרו אחת מהתמונות שלו. דבר לא נרשם.
error-photo-not-wanted = דבר כבר לא ממתין לתמונה הזאת
error-photo-not-wanted-help = פתחו את השלב והוסיפו שם את התמונה.
error-marks-too-many = יותר מדי סימונים בתמונה אחת
error-marks-too-many-help = תמונה מקבלת עד 12. בטלו חלק, ואז שמרו את השאר.
error-mark-refused = אי אפשר לשמור סימון
error-mark-refused-help = ציירו אותו על התמונה ומעט גדול יותר, וקו חופשי בפחות משיכות.
error-mark-label-refused = אי אפשר לשמור את המילים שעל התמונה
error-mark-label-refused-help = כתבו 1 עד 40 תווים בשורה אחת, בלי תווי בקרה.
error-waiver-too-long = הסיבה ארוכה מדי
error-waiver-too-long-help = כתבו אותה בעד 200 תווים.

## היומן.
entry-photo-marked = תמונה סומנה
entry-photos-paired = תמונות הוצגו כלפני ואחרי, או שוב בנפרד

## ניירות.
photo-caption-marked = { $caption }. סומן: { $labels }
photo-alt-marked = { $alt } התמונה מסומנת.
photo-alt-labelled = { $alt } סומן עליה: { $labels }.
photo-caption-before = לפני, { $at }: { $said }
photo-caption-after = אחרי, { $at }: { $said }
photo-alt-before = לפני, נשמרה { $at }. { $said }
photo-alt-after = אחרי, נשמרה { $at }. { $said }

## מבט מקרוב וסימון.
ui-photo-closer = מבט מקרוב, סימון
ui-photo-title = תמונה: { $title }
ui-photo-back = חזרה לשלב
ui-photo-none-yet = עוד אין תמונה לשלב הזה.
ui-zoom = הגדלה
ui-zoom-in = הגדלה
ui-zoom-out = הקטנה
ui-zoom-one = 1:1
ui-zoom-fit = הכול
ui-mark-tools = מה האצבע עושה
ui-mark-look = הזזה
ui-mark-arrow = חץ
ui-mark-ring = עיגול
ui-mark-freehand = ציור
ui-mark-label = מילים
ui-mark-how-look = גררו כדי להזיז, צבטו או לחצו על + ועל - כדי להגדיל ולהקטין. במקלדת: מקשי החצים מזיזים, + ו־- משנים גודל.
ui-mark-how-arrow = גררו מהזנב אל החוד. במקלדת: מקשי החצים מזיזים את הצלב, Enter קובע כל קצה.
ui-mark-how-ring = גררו על פני מה שהעיגול מקיף. במקלדת: מקשי החצים מזיזים את הצלב, Enter קובע כל פינה.
ui-mark-how-freehand = ציירו באצבע. במקלדת: Enter מניח את העט ומרים אותו, מקשי החצים מציירים.
ui-mark-how-label = כתבו את המילים, ואז געו במקום שלהן. במקלדת: מקשי החצים מזיזים את הצלב, Enter מניח אותן.
ui-mark-words = מילים על התמונה, עד 40 תווים
ui-mark-back = ביטול הסימון האחרון
ui-mark-clear = הסרת כל הסימונים
ui-mark-keep = שמירת הסימונים
ui-mark-drop = להשאיר כפי שהיה
ui-mark-undone = השינוי האחרון בסימונים בוטל.
ui-mark-count = { $count ->
    [0] אין סימונים
    [one] סימון אחד
    [two] שני סימונים
   *[other] { $count } סימונים
}
ui-mark-unsaved = עוד לא נשמר.
ui-mark-kept = הסימונים נשמרו. התמונה עצמה נשארה כפי שצולמה.
ui-pair = לפני ואחרי
ui-pair-about = תמונות קודמות של השלב נשארות. אחת מהן יכולה לעמוד ליד האחרונה, כאן ובדוח הממצאים.
ui-pair-before = לפני, { $when }
ui-pair-after = אחרי, { $when }
ui-pair-with = להציג את זו כ״לפני״
ui-pair-alone = להציג רק את האחרונה

## תמונה שצולמה כשהיישום נסגר.
ui-wanted = תמונה עבור ״{ $title }״ הייתה בצילום, { $when }.
ui-wanted-choose = בחירת התמונה
ui-wanted-found = שימוש בתמונה שהמצלמה צילמה, { $when }
ui-wanted-drop = כבר לא נחוצה

## הטקסט הקצר כקוד.
ui-qr = הצגה כקוד QR
ui-qr-hide = הסתרת קוד ה־QR
ui-qr-of = קוד QR שמחזיק את הטקסט הקצר
ui-qr-about = כוונו אליו את מצלמת הטלפון השני. הוא מחזיק את הטקסט הקצר שלמעלה; דבר לא עובר ברשת.
