# התותב הישן: אם יש, איך הוא יוצא, ומה נראה בבית המיסב

ui-look-dyed = חיפשתם סדקים עם נוזל חודר?
ui-look-sleeved = יש בקדח תותב מתיקון קודם?
ui-look-anew = התותב הישן בחוץ: חפשו שוב סדקים, גם במקום שבו ישב. התשובות שלפני כן אינן נחשבות.
ui-bench-old-sleeve = הוצאת התותב הישן
ui-old-sleeve-about = תותב ישן מסתיר את הדופן שתישא את החדש. הוציאו אותו, חפשו שוב סדקים ומדדו את הקדח שמאחוריו. הוראות היצרן קודמות.
ui-old-sleeve-way = איך הוא יצא?
ui-old-sleeve-heat = בחום
ui-old-sleeve-heat-about = חממו את הבית באופן אחיד, אף פעם לא בלהבה ולא מעל הגבול שלו, עד שהוא משחרר את התותב.
ui-old-sleeve-press = בכבישה
ui-old-sleeve-press-about = תמכו בבית ממש מתחת למושב, כבשו ישר, ועצרו אם הוא לא זז: חום עוזר יותר מכוח.
ui-old-sleeve-bored = בחריטה
ui-old-sleeve-bored-about = השאירו קליפה דקה של התותב הישן וקלפו אותה. אסור שהסכין תגיע לבית.
ui-old-sleeve-outside = קוטר חיצוני של התותב הישן, מ״מ (אפשר להשאיר ריק)
ui-old-sleeve-out = הוא בחוץ
ui-old-sleeve-behind = הקדח מאחורי התותב הישן

look-line-cracked = הבית סדוק, או שאוזן שבורה.
look-line-no-crack-dye = לא נמצא סדק עם נוזל חודר.
look-line-no-crack-eye = לא נראה סדק בעין. סדק דק מתגלה רק עם נוזל חודר.
look-line-cracks-open = לא חיפשו סדקים.
look-line-ring-turned = המיסב הסתובב בתוך הקדח שלו.
look-line-ring-still = אין סימנים של מיסב שהסתובב בתוך הקדח שלו.
look-line-ring-open = לא חיפשו סימנים של מיסב שהסתובב בתוך הקדח שלו.
look-line-sleeved = בקדח יש, או היה, תותב מתיקון קודם.
look-line-bare = אין תותב בקדח.
look-line-wall = דופן שחייבת להישאר: { $wall }.

sleeve-out-heat = התותב הישן יצא בחום.
sleeve-out-press = התותב הישן יצא בכבישה.
sleeve-out-bored = התותב הישן הוצא בחריטה.
sleeve-out-size = מבחוץ הוא נמדד { $size }.
sleeve-out-grip = מול הקדח שמאחוריו אלה { $grip } הידוק בקור.
sleeve-out-loose = התותב הישן היה רופף: הקדח שמאחוריו רחב יותר ב־{ $grip }.
sleeve-out-look-again = מה שהוא הסתיר נחשב רק אחרי שחיפשו שם שוב סדקים ומדדו.

verdict-why-old-sleeve-out = התותב הישן בחוץ: הקדח מקבל חדש.
verdict-gap-old-sleeve = אם יש תותב ישן בקדח
verdict-gap-behind-sleeve = הוצאת התותב הישן ומדידת הקדח שמאחוריו
entry-sleeve-out = התותב הישן הוצא
entry-bore-behind = הקדח נמדד מאחורי התותב הישן
repair-heading-look = מבט על הבית, תותב ישן
repair-bore-behind = הקדח מאחורי התותב הישן
repair-photo-bench-behind = הקדח מאחורי התותב הישן
repair-sleeve-out-by = הוציא: { $by }, { $at }.

error-sleeve-size-refused = לשום תותב של מושב אין קוטר חיצוני כזה
error-sleeve-size-refused-help = הזינו אותו במילימטרים, מ־1 עד 1,000, או השאירו ריק.
error-sleeve-still-in = התותב הישן עוד במקומו
error-sleeve-still-in-help = רשמו קודם איך התותב הישן יצא. קדח עם התותב בתוכו נמדד כפי שנמצא.
