### מה נמצא בידיים, מה הוקל, מה ביקור קודם השאיר פתוח, ומה מבקשת זהירות שאין מאחוריה תקלה.
### לאנשי המקצוע; מזהים שמסתיימים ב־owner- ואלה שמתחילים ב־note- או short- הם לבעל הרכב.

finding-sum-found = נמצא: { $findings }.
finding-sum-behind = הסיבה הסבירה ביותר לכך: { $causes }.
finding-sum-beside = סביר גם: { $causes }.
finding-sum-else-none = אף סיבה לא בולטת מלבד מה שנמצא.
made-milder = { $step }: קודם נענה ״{ $was }״, תשובה של סכנה או אזהרה. היא שונתה ל״{ $now }״ על ידי { $by } ({ $at }). הסיבה שניתנה: { $reason }
made-milder-withdrawn = { $step }: קודם נענה ״{ $was }״, תשובה של סכנה או אזהרה. היא בוטלה על ידי { $by } ({ $at }). הסיבה שניתנה: { $reason }
made-milder-again = היא נרשמה שוב והיא תקפה.
still-open-before = עדיין פתוח: ב־{ $day } הרכב הזה דורג { $label }. דבר לא מראה שזה תוקן, והביקור הזה לא מבטל זאת. אחרי התיקון פתחו ביקור חדש, ״בדיקה אחרי התיקון״, ובדקו שוב את אותם מקומות, ובחום היכן שבודקים ביד.
still-open-layout = אז הוא נבדק כ״{ $layout }״: בררו איזה מבנה נכון.
still-open-corrected = הביקור ההוא נרשם תחילה כרכב הזה ותוקן ל־״{ $car }״ אחרי שכבר נבדק משהו: בררו איזה רכב זה היה.
still-open-unread = אי אפשר לקרוא את הרשומה של אותו ביקור במלואה, ולכן הדירוג שלו הוא זה שברשימה. הוא נשאר פתוח עד שאפשר יהיה לקרוא אותה שוב: החזירו גיבוי, או את קובץ המבנה של המוסך.
note-still-open-danger = ב־{ $day } דירגנו את הרכב הזה { $label }. עדיין לא ראינו שזה תוקן.
note-still-open-warning = ב־{ $day } דירגנו את הרכב הזה { $label }. עדיין לא ראינו שזה תוקן.
before-other-layout = בפעם הקודמת הרכב נרשם כ״{ $layout }״. הביטו מתחת לרכב כדי לראות מה נכון.
error-reason-too-short = הסיבה קצרה מדי
error-reason-too-short-help = כתבו בכמה מילים, שמונה אותיות או יותר, למה התשובה קלה יותר עכשיו. דוח הממצאים מציג זאת.
cause-range = { $word }, בין { $low } ל־{ $high }
cause-something-else = משהו שלא ברשימה הזאת

finding-sum-caution-look = זהירות: עוד לא נמצאה תקלה. הקצו זמן נוסף לבדיקה.
finding-next-still-open = קודם סגרו את מה שביקור קודם השאיר פתוח: שאלו מה נעשה, הביטו בו ורשמו.
finding-next-drive-open = עד אז איש לא יכול לומר אם מותר לנהוג ברכב.
note-now-still-open-danger = אל תנהגו ברכב לפני ששאלתם אותנו. הדירוג הקודם שלנו עדיין עומד.
note-now-still-open-warning = אל תנהגו ברכב לפני ששאלתם אותנו. הדירוג הקודם שלנו עדיין עומד.
short-now-still-open-danger = אל תנהגו ברכב לפני ששאלתם אותנו. הדירוג הקודם שלנו עדיין עומד.
short-now-still-open-warning = אל תנהגו ברכב לפני ששאלתם אותנו. הדירוג הקודם שלנו עדיין עומד.
finding-next-caution-look = הקצו זמן נוסף למציאת הסיבה. אל תגישו עדיין הצעת מחיר לתיקון: לא נמצאה תקלה.
headline-caution-look = קבעו תור לבדיקה מקרוב
note-now-caution-look = קבעו תור לבדיקה מקרוב. אם הרעש או הרעידה גוברים, עצרו והתקשרו אלינו.
short-now-caution-look = קבעו תור לבדיקה מקרוב. אם הרעש או הרעידה גוברים, עצרו והתקשרו אלינו.
finding-next-after-repair = צאו לנסיעת מבחן לפני שמחזירים את הרכב: אותה מהירות ואותו הילוך כמו בתלונה.
stop-road-test = כל בדיקה שאפשר לעשות במוסך נעשתה. אפשר להמשיך לנסיעת מבחן.
next-looks-first = בדיקת החופש נדחתה: הביטו במה שמחזיק את המיסב ובתומכים, ואז בדקו שוב ביד.

note-likely-else = מלבד מה שמצאנו, ייתכן שזו הסיבה: { $about }
note-in-order = בדקנו ביד את הגל ואת המיסב שלו ומצאנו אותם תקינים.
note-in-order-ends = בדקנו ביד את שני קצות הגל ומצאנו אותם תקינים.
note-open-support-look = לא ראינו את הגומי שמחזיק את המיסב.
note-open-which = { $count ->
    [one] הבדיקה היא: { $steps }.
   *[other] הבדיקות הן: { $steps }.
}

rule-coupling-worn = מחבר או מפרק של הגל שחוק או קשה לתנועה.
rule-coupling-worn-owner = מפרק על הגל שחוק.
rule-coupling-worn-joint-stiff-owner = מפרק על הגל קשה לתנועה.
note-could-coupling-worn = המפרק עלול להישחק עוד עד שהגל ירעד או ישתחרר.
rule-boot-torn = מגן הגומי של מפרק קרוע: גריז יוצא ולכלוך נכנס.
rule-boot-torn-owner = כיסוי הגומי של מפרק קרוע. גריז יוצא ולכלוך נכנס.
note-could-boot-torn = בלי הגריז המפרק נשחק. בסוף הוא עלול להישבר.

rule-cold-check-buzz-rubber = התמיכה נבדקה ביד כשהיא קרה, או שחומה לא נרשם. בדיקה קרה לא שוללת דבר: גומי קשיח בקור ומתגמש יותר בחום. בדקו שוב ביד כשחם.
rule-cold-check-buzz-rubber-owner = בדקנו ביד את חלק הגומי כשהוא קר, ובחום הוא מתגמש יותר.
unknown-cold-rubber = רעש או רעידה עם בדיקה קרה: גומי מתגמש יותר בחום. בדקו שוב ביד כשהתמיכה חמה.
note-cold-rubber = בדקנו ביד את חלק הגומי כשהוא קר. בחום הוא מתגמש יותר.
note-could-cold-check-buzz-rubber = אם הגומי לא מחזיק בחום, הגל עלול להתנדנד ולפגוע בחלקים אחרים.

rule-no-bearing-action-after-repair = אחרי התיקון: לא הורגש חופש, ולא נמצא דבר נוסף. התיקון מחזיק, עד כמה שנבדק.
rule-no-bearing-action-after-repair-owner = בדקנו שוב אחרי התיקון. בדקנו ביד אם יש תנועה ולא מצאנו תקלה.
rule-no-bearing-action-play-not-driven = לא שוחזר: התלונה היא מנסיעה בכביש, והרכב לא נסע בכביש. לא הורגש חופש, ולא נמצא דבר נוסף.
rule-no-bearing-action-play-not-driven-owner = אתם מבחינים בזה בכביש, ולא נסענו שם ברכב. בדקנו ביד אם יש תנועה ולא מצאנו תקלה.
rule-no-bearing-action-ends-not-driven = לא שוחזר: התלונה היא מנסיעה בכביש, והרכב לא נסע בכביש. לא הורגש חופש בקצות הגל, ולא נמצא דבר נוסף.
rule-no-bearing-action-ends-not-driven-owner = אתם מבחינים בזה בכביש, ולא נסענו שם ברכב. בדקנו ביד את שני קצות הגל ולא מצאנו בהם תקלה.
unknown-not-driven = לא שוחזר: התלונה היא מנסיעה בכביש, והרכב לא נסע בכביש.
note-not-driven = אתם מבחינים בזה בכביש, ולא נסענו שם ברכב.

## מה נמצא, לפי התשובה האחת שמאחוריו.
rule-support-broken-torn-through-owner = טבעת הגומי שמחזיקה את המיסב קרועה לגמרי.
rule-support-broken-bracket-cracked-owner = התושבת שמחזיקה את המיסב סדוקה.
rule-support-broken-fastener-loose-owner = בורג שמחזיק את המיסב רופף.
rule-housing-broken-cracked-owner = החלק שמחזיק את המיסב סדוק.
rule-housing-broken-fastener-loose-owner = בורג שמחזיק את המיסב רופף.
rule-movement-at-support-felt-owner = הרגשנו ביד שהגל זז במיסב שלו. אסור לו לזוז שם בכלל.
rule-coupling-bolts-bolt-loose-owner = בורג שמחזיק את הגל רופף.
rule-coupling-bolts-bolt-missing-owner = בורג שמחזיק את הגל חסר.
rule-support-ageing-crazed-owner = טבעת הגומי שמחזיקה את המיסב ישנה ומלאה סדקים דקים.
rule-support-ageing-oil-soaked-owner = טבעת הגומי שמחזיקה את המיסב ספוגה בשמן.
rule-support-ageing-off-centre-owner = טבעת הגומי שמחזיקה את המיסב שקועה או לא במקומה.
rule-rubber-play-knocks-owner = המיסב זז בטבעת הגומי שלו עד שהוא מכה במעצור.
rule-rubber-play-beyond-figure-owner = המיסב זז בטבעת הגומי שלו יותר ממה שהיצרן מתיר.
rule-turns-badly-rough-owner = הגל מסתובב ביד בחספוס.
rule-turns-badly-resists-owner = קשה לסובב את הגל ביד.

## איפה המיסב יושב, לפי מבנה.
drawing-rigid-output-speed = איפה המיסב יושב: הגל עובר מתחת לרצפה בשני חלקים, מתיבת ההילוכים לסרן האחורי. ביניהם המיסב שלו יושב בבית מתכת קשיח.
drawing-two-centres = איפה המיסבים יושבים: הגל עובר מתחת לרצפה בשלושה חלקים. ביניהם שני מיסבים יושבים בטבעות גומי.
drawing-half-shaft = איפה המיסב יושב: הגל עובר לרוחב הרכב מתיבת ההילוכים לגלגל קדמי. ליד המנוע המיסב שלו יושב בתושבת מתכת קשיחה.
drawing-front-shaft = גל עובר מאמצע הרכב לסרן הקדמי, עם מפרק בכל קצה ובלי מיסב ביניהם.
drawing-one-piece = גל אחד עובר מתחת לרצפה מתיבת ההילוכים לסרן האחורי, עם מפרק בכל קצה ובלי מיסב ביניהם.

## בצינור.
step-shaft-look-do-tube = רק כשהצינור פתוח. כשהוא סגור איש לא יכול לראות את הגל: ענו ״לא ניתן לראות״.
step-turn-by-hand-do-tube = רק כשהצינור פתוח והגל חופשי ביד. כשהוא סגור אי אפשר לאחוז בגל: ענו ״לא בוצע״. אחרת סובבו אותו לאט, סיבוב שלם, והרגישו אם הוא מחוספס או כבד.

## מה שנשאר פתוח, בכותרת, ומפרקים שקובעים.
headline-caution-open = נמצאה תקלה; הבדיקה בידיים עוד פתוחה
finding-sum-caution-open = זהירות: משהו נמצא, והבדיקה שקובעת עוד פתוחה.
headline-still-open-danger = דירוג סכנה קודם עוד לא נסגר
headline-still-open-warning = דירוג אזהרה קודם עוד לא נסגר
finding-sum-still-open-danger = דירוג סכנה קודם עוד לא נסגר: עד אז שום דבר למטה לא מאשר שהרכב תקין.
finding-sum-still-open-warning = דירוג אזהרה קודם עוד לא נסגר: עד אז שום דבר למטה לא מאשר שהרכב תקין.
note-open-coupling-look = לא הבטנו במפרקי הגל.
limit-coupling-look = המפרקים והברגים שלהם לא נבדקו במבט, או לא כולם.
limit-coupling-look-owner = לא ראינו את כל מפרקי הגל.
note-could-turns-badly-none = מפרק עלול להתחמם ולהישבר. אז הגל עלול להשתחרר.
next-left-out = זה נשאר פתוח עד עכשיו: הביטו בו לפני שמחזירים את הרכב.
note-changed = תשובה אחת שונתה במהלך הבדיקה: בהתחלה היא הצביעה על סכנה גדולה יותר. שאלו אותנו למה.
rule-sagging-touches = תמיכת הגומי שקועה, ומשהו נוגע: סביר ביותר שהגל עצמו. חפשו עליו סימני שפשוף.
rule-sagging-touches-owner = הגומי שמחזיק את הגל שקוע, ומשהו נוגע.
note-could-sagging-touches = הגל עלול להתחכך, להיפגע ולהשתחרר בזמן נסיעה.
rule-play-unsure-none = שני קצות הגל נבדקו ביד, ולא ניתן לשלול תנועה. בדקו שוב את שניהם כשאדם שני מביט במפרק.
rule-play-unsure-none-owner = בדקנו ביד תנועה בשני קצות הגל ואיננו בטוחים.
note-could-play-unsure-none = אם מפרק רופף, הגל עלול להשתחרר בזמן נסיעה.
note-could-unrated-none = עוד אי אפשר לדעת. אם מפרק רופף, הגל עלול להשתחרר בזמן נסיעה.
finding-next-again-owner = תנו לבעלים את הדף. אל תגישו הצעת מחיר לפני בדיקה חוזרת ביד.
rule-cold-check-buzz-repaired = אחרי תיקון, ונבדק קר או בלי טמפרטורה: בדיקה קרה אינה שוללת דבר. לבדוק שוב בחום לפני שאומרים שהתיקון מחזיק.
rule-cold-check-buzz-repaired-owner = הרכב תוקן, ובדקנו אותו קר. רק בחום רואים אם התיקון מחזיק.
next-whose-roughness = נתקו את הגל וסובבו אותו לבדו: כך רואים אם החספוס שלו.
finding-elsewhere = לא נספר: { $answers }. הרכב נרשם אז עם מבנה אחר או נתון אחר. בדקו שוב.
rule-set-apart = משהו נמצא כשהרכב היה רשום עם מבנה אחר או נתון אחר, ולא נבדק שוב ולא בוטל. הסדירו זאת קודם.
rule-set-apart-owner = מצאנו ברכב הזה משהו שעוד לא הוסדר.
note-could-set-apart = אם זה במיסב, הגל עלול להשתחרר בזמן נסיעה.
