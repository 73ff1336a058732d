### פרטי המוסך, היחידות שלו, ומה שהם מוסיפים לניירות.

length-um = { $um } מיקרון
length-thou = { $thou } אלפיות אינץ׳
length-inch = { $inch } אינץ׳
readings-joint = { "; " }
odometer-converted = { $converted } (נקרא { $read })

letterhead-phone = טלפון { $phone }
note-ask-named = שאלו את { $workshop }.
note-ask-named-technician = שאלו את { $workshop }. השם על הבדיקה: { $technician }.
note-ask-phone = טלפון: { $phone }.
note-receipt-from = הדף מאת: { $workshop }

## ההחלטה של הבעלים כשאין מה לתקן. שלוש האפשרויות נרשמות באותו אופן בכל דירוג.
decision-repair-notice = אני רוצה שיבדקו שוב
decision-decide-later-notice = אחשוב על זה
decision-decline-notice = לא רוצה שייעשה עוד משהו
decision-repair-unrated = בבקשה סיימו את הבדיקה
decision-decide-later-unrated = אחשוב על זה
decision-decline-unrated = לא רוצה שיבדקו
decision-short-repair = להמשיך
decision-short-decide-later = חושבים על זה
decision-short-decline = נשאר כמו שהוא

## דוח הממצאים.
finding-heading-scope = היקף העבודה במיסב
finding-heading-gauges = קריאות שעון מדידה
finding-not-checked = לא נבדק: { $steps }.
detail-gauge = נקרא בשעון מדידה: ראו טבלת קריאות.
gauge-column-place = איפה
gauge-column-readings = קריאות
gauge-column-mean = ממוצע במיסב
gauge-column-expanded = אי־ודאות מורחבת, 95%
gauge-column-limit = גבול
gauge-column-decision = הכרעה
gauge-plus-minus = ± { $expanded }
gauge-expanded-none = לא ידועה מקריאה אחת
gauge-limit-unknown = לא ידוע

scope-before-teardown = המדידה אחרי הפירוק מכריעה לאיזו מהן מגיעים. עד שהמיסב בחוץ והמושב שלו נמדד, איש לא יכול לומר.
scope-bench = המדידה אומרת: { $verdict }
scope-bearings-only = מיסבים בלבד
scope-bearings-only-about = מיסבים חדשים במושב כפי שהוא, אם הוא עגול, הדוק ותקין.
scope-skim-and-sleeve = שיקום המושב ותותב
scope-skim-and-sleeve-about = המושב השחוק נחרט ותותב נכבש בו, אם נותרת מספיק דופן.
scope-replace-housing = החלפת בית המיסב
scope-replace-housing-about = בית מיסב חדש ומיסבים חדשים, אם הבית סדוק או שנותרת מעט מדי דופן.
scope-chosen = לזה הגיעה המדידה
scope-ruled-out = נשלל
scope-open = פתוח
scope-hours = { $from } עד { $to } שעות
scope-hours-exact = { $hours } שעות
scope-hours-are = השעות הן מה שהמוסך הזה צריך בדרך כלל; רכב יכול לדרוש יותר או פחות.
scope-rate = תעריף: { $rate } לשעה, כפי שהמוסך הזין.
scope-no-quote = זה היקף עבודה, לעולם לא הצעת מחיר.

paper-label-unprintable = ״[…]״ עומד במקום אותיות שאין לנייר הזה גופן עבורן. רשומת הביקור שומרת אותן כפי שהוקלדו.

## המסך.
ui-workshop = המוסך
ui-workshop-about = מה שתזינו יופיע מעכשיו על כל נייר. מה שנשאר ריק מושמט.
ui-workshop-name = שם
ui-workshop-address = כתובת, שורה אחר שורה
ui-workshop-phone = טלפון
ui-workshop-length = אורכים
ui-workshop-length-none = כנהוג בשפה
ui-workshop-length-mm = מילימטרים
ui-workshop-length-thou = אלפיות אינץ׳
ui-workshop-distance = מרחקים
ui-workshop-distance-none = כפי שנקראו
ui-workshop-distance-km = קילומטרים
ui-workshop-distance-miles = מיילים
ui-workshop-work = עבודה במיסב
ui-workshop-work-about = השעות שכל עבודה לוקחת לכם בדרך כלל. דוח ממצאים מציג אותן כהיקף עבודה, לעולם לא כהצעת מחיר.
ui-workshop-from = שעות, מ־
ui-workshop-to = שעות, עד
ui-workshop-rate = תעריף לשעה
ui-workshop-currency = מטבע
ui-workshop-saved = נשמר. מעכשיו כל נייר נושא זאת.
ui-workshop-draft = עוד לא נשמר. מה שכתבתם נשאר כאן עד שתשמרו או תזרקו אותו.
ui-handover-papers = גם ניירות, לקורא בלי Steady
ui-handover-papers-language = שפת הניירות
ui-handover-as-made = כפי שהופקו לאחרונה

error-workshop-too-long = פרטי המוסך לא נכנסים לנייר
error-workshop-too-long-help = שם וכתובת: עד 100 תווים בשורה, ארבע שורות לכל היותר; הטלפון עד 60, המטבע עד 12. קצרו מה שארוך יותר. דבר לא השתנה.
error-workshop-number = אי אפשר לקרוא את השעות או את התעריף
error-workshop-number-help = כתבו 2.5 או 2,5, ואלפים בלי סימן, כמו 1250. השעות הולכות מהקטן לגדול, עד 200. דבר לא השתנה.
error-workshop-unreadable = אי אפשר לקרוא את קובץ המוסך
error-workshop-unreadable-help = בדקו שהוא שלם ובמבנה של הקובץ ב־demo-data/workshop. דבר לא השתנה.
