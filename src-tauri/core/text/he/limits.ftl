### מה שמסורב מפני שהוא מעבר למה שאפשר לרשום, או אינו מה שצריך להיות. הגבולות נמצאים ב־
### `src/model/limits.rs`. סירובים כמו ב־errors.ftl.

## משהו שהוקלד או צויר.
error-intake-too-long = טקסט בקליטה ארוך מדי, או שיש בו תווים שלא נראים
error-intake-too-long-help = שמות, לוחית רישוי, מספר שלדה ופרטי קשר: עד 200 תווים; התלונה ומתי זה קורה: עד 10,000. קצרו מה שארוך יותר, והקלידו מחדש מה שהודבק.
error-layout-fixed = כבר אי אפשר לשנות את מבנה הגל
error-layout-fixed-help = השעון או השולחן כבר מדדו בגל שלו. פתחו ביקור חדש לרכב הזה עם המבנה הנכון.
error-layout-takes-back = השינוי מבטל תשובות
error-layout-takes-back-help = התשובות בינתיים אחרות מאלה שהוצגו. שמרו שוב.
error-warm-from-refused = בטמפרטורה כזאת בית המסב אינו חם
error-warm-from-refused-help = הזינו את נתון היצרן במעלות צלזיוס, 30 ומעלה, או השאירו ריק.
error-signature-refused = אי אפשר לשמור את החתימה
error-signature-refused-help = נקו את השדה ותנו לבעלים לחתום עוד פעם, בתוך המסגרת ובשמו בלבד.
error-bench-note-empty = הערת השולחן ריקה
error-bench-note-empty-help = כתבו מה נראה או נעשה, או השמיטו את ההערה.
error-bench-note-too-long = הערת השולחן ארוכה מדי
error-bench-note-too-long-help = כתבו אותה בעד 2,000 תווים, או כתבו שתי הערות.
error-wall-refused = הדופן שחייבת להישאר לא יכולה להיות נכונה
error-wall-refused-help = תנו אותה במילימטרים מ־0.1 עד 100, או השאירו ריק אם אינה ידועה.
error-pass-number-refused = אין מעבר במספר הזה
error-pass-number-refused-help = מעברים נספרים מ־1 ועד 200.
error-pass-without-bore = הקדח עוד לא נמדד
error-pass-without-bore-help = מדדו קודם את הקדח כפי שנמצא, ואז רשמו את המעבר.
error-pass-diameter-refused = הקוטר אחרי המעבר לא יכול להיות נכון
error-pass-diameter-refused-help = תנו אותו במילימטרים מ־1 עד 1,000, או השאירו ריק אם לא נמדד.
error-gauge-not-here = שעון מדידה לא שייך לשלב הזה
error-gauge-not-here-help = בשעון מודדים בשתי בדיקות החופש של התמיכה.
error-bore-too-many-depths = יש יותר עומקים ממה שאפשר לקלוט
error-bore-too-many-depths-help = עד 200. קריאות של עומק אחד חייבות לציין בדיוק אותו עומק.
error-entry-beyond = ערך מעבר למה שאפשר לרשום
error-entry-beyond-help = חפשו ספרה מיותרת או טקסט שהודבק בטעות. דבר לא נרשם.

## ביקור שמלא עד סופו.
error-visit-full = הביקור מחזיק את כל הרשומות שביקור יכול להחזיק
error-visit-full-help = פתחו ביקור חדש לרכב והמשיכו שם. כל מה שנרשם עד עכשיו נשמר.
error-visit-photos-full = הביקור מחזיק את כל התמונות שביקור יכול להחזיק
error-visit-photos-full-help = הוא מקבל 200. פתחו ביקור חדש לרכב, או תנו סיבה לכך שאין תמונה. כל מה שנשמר נשאר.
error-bench-notes-full = השולחן מחזיק את כל ההערות שהוא יכול להחזיק
error-bench-notes-full-help = הוא מקבל 100 בביקור אחד. מה שנרשם עד עכשיו נשמר.

## קובץ.
error-handover-spelling = רשומה בקובץ ההעברה לא כתובה כפי ש־Steady כותב
error-handover-spelling-help = אל תסמכו על העותק הזה. בקשו להפיק את הקובץ מחדש במכשיר שממנו בא. דבר לא נקלט.
error-handover-beyond = רשומה בקובץ ההעברה מחזיקה יותר ממה שאפשר לרשום
error-handover-beyond-help = אף מכשיר לא רושם רשומה כזאת. בקשו להפיק את הקובץ מחדש במכשיר שממנו בא. דבר לא נקלט.
error-case-photo-unreadable = אי אפשר לקרוא תמונה שהמקרה מציין
error-case-photo-unreadable-help = ציינו קובץ לפי הנתיב שלו מקובץ המקרה, ובדקו שמותר לכם לקרוא אותו. דבר לא נרשם.
error-case-too-long = במקרה יש יותר שורות ממה שביקור מחזיק
error-case-too-long-help = הוא מקבל 1,000 תשובות ותנאים, ואותו מספר שורות של השולחן. דבר לא נרשם.
error-database-foreign = מסד הנתונים לא נוצר ב־Steady
error-database-foreign-help = יש בו משהו ש־Steady לעולם לא כותב. בחרו את הקובץ steady.db של תיקיית נתונים או של גיבוי. דבר לא נקלט.
