# התותבים ומכשירי המדידה של המוסך

stock-sleeve = תותב { $material }, { $outside } מבחוץ, קדח { $bore }
stock-open = { $sleeve }: לא ידוע אם הוא מתאים. חשבו את האפיצות עם הטמפרטורות והקוטר החיצוני של הבית.
stock-fits = { $sleeve }: מתאים לקדח הקיים, שמותר לו { $least } עד { $most }, אם הדופן מרשה.
stock-bore-to = { $sleeve }: בשבילו חרטו את הבית ל־{ $least } עד { $most }, אם הדופן מרשה.
stock-bore-too-wide = { $sleeve }: קטן מדי. הקדח יכול להיות { $most } לכל היותר, והוא רחב יותר או צריך להיות.
stock-too-thin = { $sleeve }: דק מדי אחרי שנחרט למיסב.
stock-no-wall = { $sleeve }: גדול מדי, לא תישאר דופן לבית.
stock-own-bore-too-wide = { $sleeve }: הקדח שלו רחב מדי למיסב הזה.
stock-none-holds = { $sleeve }: אין הידוק שגם מחזיק בחום וגם נסבל בקור.
stock-wall-too-thin = { $sleeve }: גדול מדי, תישאר לבית דופן דקה מהנדרש.
stock-housing-replaced = { $sleeve }: שום תותב לא נכנס, יש להחליף את הבית.

ui-stock = תותבים על המדף
ui-stock-about = מידות שיש לכם או שאתם קונים. השולחן אומר אילו מהם יתאימו לבית שלפניכם.
ui-stock-empty = המוסך לא הזין תותבים משלו.
ui-stock-take = להעביר לאפיצות
ui-stock-outside = קוטר חיצוני, מ״מ
ui-stock-bore = קדח כפי שנקנה, מ״מ
ui-stock-more = עוד תותב

ui-instruments = מכשירי מדידה
ui-instruments-about = במה אתם מודדים. בחרו אותו ליד השולחן, והצעד והשגיאה שלו כבר רשומים; אם הכיול שלו פג, זה נאמר.
ui-instrument-name = שם או מספר
ui-instrument-resolution = הצעד הקטן ביותר, מ״מ
ui-instrument-mpe = שגיאה מותרת, מ״מ
ui-instrument-repeatability = פיזור של קריאות חוזרות, מ״מ (אפשר להשאיר ריק)
ui-instrument-calibrated = כויל ב־
ui-instrument-due = בתוקף עד
ui-instrument-more = עוד מכשיר
ui-instrument-which = מכשיר של המוסך
ui-instrument-none = אחר
ui-instrument-overdue = הכיול אינו תקף היום (רשום עד { $due }). כיילו לפני שמחליטים לפיו.
ui-instrument-no-date = לא ידוע על כיול. כיילו לפני שמחליטים לפיו.

instrument-line-due = נמדד עם { $name }, כויל ב־{ $calibrated }, בתוקף עד { $due }.
instrument-line-overdue = נמדד עם { $name }, שהכיול שלו פג ב־{ $due }: השגיאה שלו יכולה להיות גדולה ממה שאי־הוודאות אומרת.
instrument-line-no-date = נמדד עם { $name }, שלא ידוע על כיול תקף שלו: השגיאה שלו יכולה להיות גדולה ממה שאי־הוודאות אומרת.

error-workshop-sleeve = אי אפשר לקרוא תותב של המלאי
error-workshop-sleeve-help = תנו את החומר, הקוטר החיצוני והקדח הקטן ממנו במילימטרים, מ־1 עד 1,000; עד 40 תותבים. דבר לא השתנה.
error-workshop-instrument = אי אפשר לקרוא מכשיר
error-workshop-instrument-help = תנו לכל אחד שם משלו, את הצעד ואת השגיאה המותרת במילימטרים, מעל 0 ועד 1; יום הכיול לפני היום שבו הוא פג. עד 20 מכשירים. דבר לא השתנה.
error-unknown-instrument = למוסך אין מכשיר בשם הזה
error-unknown-instrument-help = הזינו אותו עם פרטי המוסך, או תנו את הצעד והשגיאה ביד.
