### שעון המדידה על הגל: מה הקריאות אומרות, ומה מונע לשפוט אותן.

gauge-mean = תנועה במיסב: { $mean }, מתוך { $count ->
    [one] קריאה אחת
    [two] שתי קריאות
   *[other] { $count } קריאות
 }.
gauge-ratio = ‏1 מ״מ בשעון הוא { $ratio } מ״מ במיסב.
gauge-interval = בהסתברות 95% היא בין { $low } ל־{ $high } (± { $expanded }, מקדם { $factor }).
gauge-one-reading = קריאה אחת לא אומרת דבר על הפיזור שלה, ולכן אי אפשר לתת תחום.
gauge-doubtful = { $count ->
    [one] קריאה אחת רחוקה
    [two] שתי קריאות רחוקות
   *[other] { $count } קריאות רחוקות
 } מהאחרות. הביטו שוב בשעון ובזרוע; בכל זאת נכלל.

gauge-limit-maker = גבול: { $limit }, נתון היצרן.
gauge-limit-internal-clearance = אמת מידה: { $limit }, המרווח הפנימי הגדול ביותר של מיסב כזה לפני ההרכבה. לא גבול רשמי; נתון היצרן קודם.
gauge-limit-none = לא ידוע גבול: השוו, אל תשפטו.
gauge-bands = מוכח בגבול עד { $pass }, מוכח מעבר לו מעל { $fail }.
gauge-bands-no-pass = בשעון הזה אי אפשר להוכיח דבר בגבול; מוכח מעבר לו מעל { $fail }.

gauge-decision-proven = תנועה מעבר לגבול מוכחת.
gauge-decision-none-proven = מוכח שהתנועה בגבול.
gauge-decision-not-decided = לא הוכרע: הקריאות לא מוכיחות לא זה ולא זה.
gauge-decision-compare = לא נשפט: לא ידוע גבול.

gauge-meaning-felt = זה נחשב כתנועה שהורגשה: סכנה, אל תנהגו.
gauge-meaning-beyond-figure = זה נחשב כתנועה מעבר לנתון היצרן.
gauge-meaning-unsure = זה נחשב כספק, וספק לעולם לא נקרא תקין.
gauge-meaning-replaces-unsure = זה מכריע תשובה לא בטוחה. זה לעולם לא מבטל תנועה שיד הרגישה.
gauge-meaning-silent = זה לא מוסיף דבר למה שהידיים הרגישו. השוו לרכב דומה או לביקור קודם.

gauge-remedy-more-readings = מה יכריע: { $readings } קריאות בסך הכול.
gauge-remedy-finer-gauge = מה יכריע: שעון של { $resolution } { $unit } עם שגיאה מותרת של { $mpe } { $unit } לכל היותר.
gauge-remedy-at-bearing = מה יכריע: השעון על המיסב עצמו.
gauge-remedy-finer-gauge-more-readings = מה יכריע: שעון של { $resolution } { $unit } עם שגיאה מותרת של { $mpe } { $unit } לכל היותר, ו־{ $readings } קריאות בסך הכול.
gauge-remedy-read-again = קראו שוב: לפחות { $readings } קריאות בסך הכול, עם שחרור ביניהן.
gauge-remedy-find-limit = מצאו את הגבול: נתון היצרן, או הקדח וקבוצת המרווח של המיסב.
gauge-remedy-find-figure = מצאו את נתון היצרן לתמיכה הזאת; בלעדיו אי אפשר לשפוט דבר.
gauge-remedy-too-near-limit = עוד קריאות לא יכריעו: התנועה קרובה מדי לגבול. התייחסו אליה כלא בטוחה.

gauge-budget = אי־ודאות, הגדולה ראשונה:
gauge-budget-line = { $source }: { $contribution }, { $share } מהשונות
gauge-source-scatter = פיזור הקריאות
gauge-source-resolution = צעד השעון
gauge-source-mpe = השגיאה המותרת של השעון
gauge-source-alignment = השעון לא בקו התנועה
gauge-source-gauge-place = המרחק מהציר לשעון
gauge-source-bearing-place = המרחק מהציר למיסב

gauge-chances = השעון הזה במקום הזה מפספס { $missed } מהתמיכות שמעבר לגבול, נותן אזעקת שווא ב־{ $alarm }, ומשאיר { $undecided } בלי הכרעה, אם התנועות מפוזרות באופן שווה בין אפס לפעמיים הגבול.
gauge-trend-growing = לאורך { $count } ביקורים היא גדלה ב־{ $slope } לשנה (± { $expanded }).
gauge-trend-shrinking = לאורך { $count } ביקורים היא קטנה ב־{ $slope } לשנה (± { $expanded }): שאלו מה הוחלף.
gauge-trend-no-change-shown = לאורך { $count } ביקורים לא מתגלה שינוי ({ $slope } לשנה, ± { $expanded }); זה לא אומר שאין.
gauge-maker-first = הוראות היצרן ונתוניו קודמים לכל מה שנאמר כאן.

## סירובים.
error-gauge-file-unreadable = אי אפשר לקרוא את קובץ השעון
error-gauge-file-unreadable-help = בדקו שהקובץ שלם ובמבנה של הקבצים ב־demo-data/bench. דבר לא נשפט.
error-decimal-comma = אפשר לקרוא מספר אחד בשתי דרכים
error-decimal-comma-help = הפסיק או הנקודה שבו יכולים להיות סימן עשרוני או להפריד אלפים. הוסיפו אפס בסוף, כמו 1,2500, או השמיטו את הפסיק או הנקודה.
error-mixed-units = היחידות מעורבבות
error-mixed-units-help = תנו כל אורך ביחידה האחת של המדידה. אינץ׳ הוא 25.4 מ״מ, אלפית אינץ׳ 0.0254 מ״מ.
error-not-a-number = מספר חסר או אינו מספר
error-not-a-number-help = הזינו מה שהמכשיר מראה, בספרות, עם נקודה או פסיק.
error-no-readings = אין קריאות
error-no-readings-help = קראו את כל התנועה מדחיפה למשיכה, חמש פעמים אם אפשר, והזינו כל קריאה.
error-negative-reading = קריאה מתחת לאפס
error-negative-reading-help = אפסו את השעון בדחיפה והזינו את הדרך עד המשיכה בלי סימן.
error-reading-too-large = קריאה ארוכה ממהלך השעון
error-reading-too-large-help = בדקו את היחידה: ייתכן שאלפיות אינץ׳ הוזנו כמילימטרים.
error-instrument-refused = הצעד או השגיאה המותרת של השעון אינם מעל אפס
error-instrument-refused-help = קחו את שניהם מהתעודה של השעון או מדף היצרן שלו. אין שעון בלי שגיאה.
error-gauge-at-pivot = השעון יושב על ציר ההטיה, או קרוב אליו מדי
error-gauge-at-pivot-help = הזיזו אותו לכיוון המיסב: על ציר ההטיה הגל לא זז, ובקרבתו המקום קובע הכול.
error-bearing-at-pivot = המיסב יושב על ציר ההטיה
error-bearing-at-pivot-help = בדקו את שלושת המקומות לאורך הגל. ציר ההטיה הוא הקצה שנשאר במקומו.
error-place-refused = מקום לאורך הגל לא יכול להיות נכון
error-place-refused-help = הזינו ציר הטיה, שעון ומיסב במילימטרים מנקודת אפס אחת, ואת השגיאה שלהם בלי סימן.
error-limit-refused = הגבול אינו מעל אפס
error-limit-refused-help = הזינו את נתון היצרן כפי שהוא במדריך, או השאירו ריק אם אינו ידוע.
error-bore-not-tabled = אין בטבלה מרווח פנימי לקדח הזה
error-bore-not-tabled-help = בטבלה קדחים מעל 10 ועד 140 מ״מ. הזינו במקום זאת את נתון היצרן, או השאירו את המיסב ריק: אז דבר לא נשפט.
error-earlier-refused = תוצאה של ביקור קודם לא יכולה להיות נכונה
error-earlier-refused-help = הזינו לכל אחת לפני כמה ימים, תנועה ואי־ודאות תקנית, כולן מעל אפס.
