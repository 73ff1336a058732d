### המסכים שסביב העבודה: פתיחה ראשונה, הגדרות, תרגול, מושב הנהג, הפרעות.

## פתיחה ראשונה.
ui-welcome-what-title = בודקים את הרעש ביד
ui-welcome-what = Steady מוביל אתכם שלב אחר שלב אל המיסב של גל ההינע: למה להקשיב מהמושב, מה להניע ביד מתחת לרכב, ומה לרשום.
ui-welcome-maker = הוראות היצרן והחוק המקומי קודמים לו. אין צורך ברשת.
ui-welcome-rule-title = רק הבדיקה בידיים קובעת
ui-welcome-rule = רעש ורעידה מעוררים חשד. רק הזזת הגל ביד מגלה.
ui-welcome-open = מה שלא נבדק לעולם לא ייקרא בטוח. אפשר להפסיק בכל שלב ולחזור.

## הגדרות.
ui-settings = הגדרות
ui-settings-of = הגדרות. הטכנאי: { $name }
ui-thumb = באיזה אגודל מפעילים את המסך?
ui-thumb-left = שמאל
ui-thumb-right = ימין
ui-theme-contrast = ניגודיות גבוהה

## תרגול.
ui-practice = תרגול
ui-practice-about = עוברים בכל המסכים עם רכב שאינו קיים. הוא נשמר בנפרד מהביקורים שלכם, ואי אפשר להפיק ממנו נייר או קובץ.
ui-practice-start = התחלת ביקור תרגול
ui-practice-car = רכב תרגול
ui-practice-ribbon = תרגול. לא רכב אמיתי.
ui-practice-end = מחיקת התרגול

## מושב הנהג.
ui-driver-open = מסך לנהג
ui-driver-short = נהג
ui-driver-title = אתם במושב הנהג
ui-driver-nobody = אין איש מתחת לרכב. איש לא נכנס לשם.
ui-driver-running-1 = נשארים לשבת. בלם חניה משוך, בלי הילוך.
ui-driver-running-2 = לוחצים לאט על הדוושה, עד בערך 2,500 סל״ד.
ui-driver-running-3 = מחזיקים פחות מעשר שניות. משחררים.
ui-driver-idle-1 = נשארים לשבת. בלם חניה משוך, בלי הילוך.
ui-driver-idle-2 = נותנים למנוע לעבוד בסרק. כף הרגל לא על הדוושה.
ui-driver-idle-3 = אם אומרים להגביה: לוחצים מעט, לאט, ואז משחררים.
ui-driver-creep-1 = כף הרגל מעל הבלם.
ui-driver-creep-2 = משחררים את הבלם בעדינות. זוחלים כאורך רכב אחד.
ui-driver-creep-3 = בולמים עד עצירה.
ui-driver-stop = עצרו מיד
ui-driver-stop-running = נקישה כבדה או רעידה חזקה: רגל מהדוושה, כבו את המנוע.
ui-driver-stop-creep = נקישה כבדה, או מישהו ליד הרכב: בלמו חזק, כבו את המנוע.
ui-driver-stopped = נאלצתי לעצור
ui-driver-done = סיימתי

## הפרעות.
ui-clock-behind = שעון המכשיר מפגר אחרי הרשומה האחרונה של הביקור ({ $when }). דבר לא אבד והסדר נשמר; כוונו את השעון לפני שממשיכים.

## Another layout chosen after steps were answered: what it takes back.
ui-relayout = מה השינוי מבטל
ui-relayout-why = התשובות האלה שייכות לרכב כפי שנרשם תחילה, ואינן תקפות לגביו עכשיו. הן נשארות ברישום כמבוטלות, עם התמונות שלהן:
ui-relayout-reason = אחת מהן דרשה סכנה או אזהרה: כתבו למה היא מבוטלת.
ui-relayout-do = לשנות
ui-relayout-keep = להשאיר כפי שהיה

## What a found DANGER closes.
ui-next-closed = סגור, כי נמצאה סכנה ולא מפעילים שוב את המנוע:
