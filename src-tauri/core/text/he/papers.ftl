### משפטי דוח הממצאים (למקצוע) והדף (לבעל הרכב), ואיך נכתבים מספרים ותאריכים.
### סימני מספרים ואחוזים וסדר התאריך: Unicode CLDR, השפה he.

number-group = { "," }
number-group-from = 4
number-point = { "." }
list-joint = { ", " }
reading-rpm = { $value } סל״ד
percent = { $number }%
percent-below = פחות מ־{ $number }%
percent-above = יותר מ־{ $number }%
date-day = { $day } ב{ $month } { $year }
month-1 = ינואר
month-2 = פברואר
month-3 = מרץ
month-4 = אפריל
month-5 = מאי
month-6 = יוני
month-7 = יולי
month-8 = אוגוסט
month-9 = ספטמבר
month-10 = אוקטובר
month-11 = נובמבר
month-12 = דצמבר
time-utc = { $day }.{ $month }.{ $year } בשעה { $clock } UTC
length-mm = { $mm } מ״מ
length-both = { $mm } מ״מ ({ $thou } אלפיות אינץ׳)
length-shown = mm
answer-missing = לא נבדק
word-none-yet = עוד אין

## דוח הממצאים.

finding-title = דוח ממצאים: גל ההינע והמיסב התומך שלו
finding-heading-next = מה עושים עכשיו
finding-heading-vehicle = הרכב והביקור
finding-heading-complaint = התלונה
finding-heading-reasons = למה הדירוג הזה
finding-heading-suspicion = מה מעורר חשד
finding-heading-steps = מה נבדק
finding-heading-causes = סיבות, הסבירה ביותר ראשונה
finding-heading-causes-found = סיבות, מה שמאחורי הממצא קודם
finding-heading-unknown = מה לא ידוע
finding-heading-road = כללי כשירות לדרך, לידיעה
finding-heading-cautions = הסתייגויות
finding-heading-signed = אישור קבלה של הדף לבעלים

finding-sum-danger = סכנה: אל תנהגו ברכב הזה.
finding-sum-warning = אזהרה: אסור לנהוג. יש להעביר אותו לתיקון על גבי גרר.
finding-sum-repaired = תוקן מאז: אחרי ההרכבה המיסב הסתובב חופשי ביד. הדירוג מספר מה נמצא קודם.
finding-sum-caution = זהירות: קבעו תור לתיקון.
finding-sum-notice = הודעה: אין צורך בטיפול במיסב.
finding-sum-unrated = עוד לא נבדק: הבדיקה בידיים פתוחה, ולכן אין דירוג.
finding-sum-suspicion = חשד בלבד: { $reason }
finding-sum-still = הבדיקה בידיים לא הסתיימה.
finding-sum-likely = הסביר ביותר: { $causes }.
finding-sum-no-cause = אף סיבה אחת לא בולטת.
finding-sum-bearing = לפחות סיבה אחת במיסב: { $bearing }.
finding-sum-nothing-yet = עוד לא נרשם דבר, ולכן הסיבות לא מוינו.
finding-cause-share = { $cause } ({ $percent })

finding-next-danger = אל תנהגו בו, אל תצאו לנסיעת מבחן, אל תתניעו שוב את המנוע. העמיסו על גרר כשהמנוע כבוי; אל תגררו אותו על גלגלי ההינע.
finding-next-danger-owner = הודיעו לבעלים היום, והחתימו על קבלת הדף.
finding-next-warning = אל תחזירו אותו לנהיגה. העבירו אותו לתיקון על גבי גרר, מנוע כבוי, בלי לגרור על גלגלי ההינע.
finding-next-repaired = בדקו שוב חופש בידיים, קר וחם, לפני שמחזירים את הרכב. עד אז הדירוג שלמעלה עומד.
finding-next-warning-owner = תנו לבעלים את הדף, והגישו הצעת מחיר לתיקון.
finding-next-caution = קבעו תור לתיקון, והגישו הצעת מחיר לתקלות שנמצאו.
finding-next-caution-owner = תנו לבעלים את הדף. בקשו שיחזור אם הרעש או הרעידה גוברים.
finding-next-notice = אל תציעו עבודה במיסב.
finding-next-notice-owner = תנו לבעלים את הדף. בקשו שיחזור אם הרעש חוזר או משתנה.
finding-next-unrated = אל תאשרו ואל תפסלו: רעש ורעידה לא מוכיחים דבר.
finding-next-unrated-owner = הצעת מחיר לתיקון רק אחרי הבדיקה בידיים.
finding-next-finish = השלימו את הבדיקה: { $steps }.
finding-next-check = הבדיקה הבאה: { $step }. { $why }
finding-next-maker = לפני כל תיקון, קראו את הוראות היצרן לרכב הזה.

field-label = יצרן ודגם
field-plate = לוחית רישוי
field-vin = מספר שלדה (VIN)
field-layout = מבנה הגל
field-seat = מושב המיסב
field-gearbox = תיבת הילוכים
field-cylinders = צילינדרים
field-idle = תחום הסרק
field-idle-value = { $low } עד { $high } סל״ד
field-odometer = מד מרחק
field-odometer-km = { $value } ק״מ
field-odometer-miles = { $value } מייל
field-maker-play = נתון התנועה של היצרן
field-owner = בעלים
field-contact = פרטי קשר
field-vehicle = רכב
field-opened = הרכב נכנס
field-checked = נבדק לאחרונה
field-date = תאריך (UTC)
field-technician = טכנאי
field-visit = ביקור
field-ledger = יומן
field-ledger-value = { $entries ->
    [one] רשומה אחת, גיבוב אחרון { $head }
    [two] שתי רשומות, גיבוב אחרון { $head }
   *[other] { $entries } רשומות, גיבוב אחרון { $head }
}
field-ledger-broken = תקלה ביומן
field-ledger-broken-value = החל מרשומה { $at } הרשומות ביומן לא מתחברות זו לזו. ייתכן שרשומות שונו או חסרות.
field-knowledge = כללים ונתונים
field-complaint = במילים של הבעלים
field-complaint-none = לא נרשמו
field-sounds = במה הבעלים מבחין
field-when = מתי זה קורה

reason-rests-on = { $reason } נשען על: { $answers }.
answer-at-step = { $step }: { $answer }
answer-and-gauge = { $answer } ביד, והתנועה הוכחה בשעון מדידה
weight-strong = { $answer } (חזק)
weight-clear = { $answer } (ברור)
weight-slight = { $answer } (קל)
weight-by-gauge = { $answer } (בשעון מדידה)

detail-answered = { $at }, על ידי { $by }
detail-cold = נבדק ביד כשבית המיסב קר
detail-warm = נבדק ביד כשבית המיסב חם
detail-no-temperature = לא נרשם אם קר או חם
detail-milder = שונה מתשובה של סכנה או אזהרה. הסיבה שניתנה: { $reason }
detail-milder-again = שונתה או בוטלה פעם אחת ונרשמה שוב; היא תקפה. הסיבה שניתנה: { $reason }
detail-disputed = שני מכשירים רשמו תשובות שונות. הגרועה מביניהן נחשבת.
photo-caption = { $step }: { $answer }
photo-alt = תמונה שצולמה בשלב ״{ $step }״. התשובה שנרשמה: { $answer }.
photo-none = אין תמונה: { $reason }
photo-none-taken = לא צולמה תמונה. Steady רשם בעצמו שלא היה מה להראות.

unknown-hands-on = { $step }: לא בוצע. רק הבדיקה בידיים קובעת.
unknown-unsure = { $step }: התוצאה לא בטוחה, ונחשבת כלא עברה.
unknown-disputed = { $step }: שני מכשירים רשמו תשובות שונות.
unknown-open = { $count ->
    [one] שלב אחד נוסף לא נבדק.
    [two] שני שלבים נוספים לא נבדקו.
   *[other] { $count } שלבים נוספים לא נבדקו.
}
unknown-figure = התנועה נשפטה לפי נתון היצרן, אבל הנתון עצמו לא נרשם. הזינו אותו בקליטה.
unknown-cold = זמזום, נקישה או רעידה עם בדיקה קרה: מושב המיסב יכול להתרופף בחום. בדקו שוב תנועה כשבית המיסב חם.
unknown-not-reproduced = לא שוחזר: לא נשמע דבר כשהמנוע עבד.
unknown-not-listened = לא שוחזר: לא נעשתה בדיקה במנוע עובד, ולכן לא הקשיבו לדבר.
unknown-ledger = החל מרשומה { $at } הרשומות ביומן לא מתחברות זו לזו.

caution-scope = הדוח הזה מכסה מה שנבדק, כפי שהיה באותו יום. חלקים שלא צוינו לא נבדקו.
caution-sorting = הסבירויות נשענות על שיקול דעת של מוסך ואינן נמדדות. רק הבדיקה בידיים קובעת לגבי המיסב.
caution-maker = הוראות היצרן והחוק המקומי שלכם קודמים לדוח הזה.
caution-quote = זו לא הצעת מחיר ולא חוות דעת של מומחה לבית משפט.

signed-text = { $decision }. הדף התקבל ב־{ $at } על ידי { $name }.
signed-text-nameless = { $decision }. הדף התקבל ב־{ $at }; לא נמסר שם.
signed-outdated = אחרי החתימה נרשם משהו נוסף: ייתכן שהוא לא מופיע בדף שנחתם.
signed-language = הדף שנחתם היה בשפה אחרת: { $language }.
signed-note = נחתם על הדף שגיבוב ה־SHA-256 שלו { $hash }.
signed-alt = חתימה, ביד.

finding-foot = דוח ממצאים, ביקור { $visit }. מה שלא צוין לא נבדק.

## הדף. מילים קצרות ומשפטים קצרים: בעל רכב לחוץ קורא אותו פעם אחת.

note-title = מה מצאנו ברכב שלכם
note-heading-found = מה מצאנו
note-heading-means = מה זה אומר
note-heading-could-happen = מה עלול לקרות
note-heading-do-now = מה לעשות עכשיו
note-heading-not-known = מה עוד לא ידוע לנו
note-heading-ask = את מי לשאול

note-found-unrated = עוד לא עשינו את כל הבדיקה בידיים.
note-found-suspicion = יש סימנים שמעוררים חשד. רק הבדיקה בידיים יכולה לקבוע.
note-found-rest-open = שאר הבדיקה עוד פתוח.
note-found-repaired = הדף הזה מספר מה מצאנו לפני התיקון. המיסב תוקן אחר כך.
note-found-more = { $count ->
    [one] יש עוד נקודה אחת. המוסך יכול להראות לכם אותה.
    [two] יש עוד שתי נקודות. המוסך יכול להראות לכם אותן.
   *[other] יש עוד { $count } נקודות. המוסך יכול להראות לכם אותן.
}

note-means-shaft = גל ההינע מעביר את כוח המנוע לגלגלים. מיסב מחזיק את הגל יציב.
note-means-danger = זה הדירוג החמור ביותר שלנו. אסור לנהוג ברכב.
note-means-warning = זה הדירוג השני בחומרתו אצלנו. אסור לנהוג ברכב.
note-means-caution = משהו דורש תיקון או מבט מקרוב. אל תדחו את זה.
note-means-notice = לא מצאנו סיבה לטפל במיסב עכשיו.
note-means-unrated = עוד אין דירוג. צליל יכול לרמוז על תקלה, אבל רק בדיקה בידיים יכולה לקבוע.
note-likely = הסיבה הסבירה ביותר: { $about }

note-could-movement-at-support = הגל עלול להשתחרר בזמן נסיעה. הוא עלול להכות ברכב או בכביש. אתם עלולים לאבד שליטה.
note-could-housing-broken = המיסב עלול להתנתק בזמן נסיעה. אז הגל עלול להכות ברכב או בכביש. אתם עלולים לאבד שליטה.
note-could-coupling-failing = המפרק עלול להישבר בזמן נסיעה. אז הגל עלול להכות ברכב או בכביש. אתם עלולים לאבד שליטה.
note-could-shaft-fibre-damaged = הגל עלול להישבר בזמן נסיעה. חלקים עלולים להכות ברכב או בכביש. אתם עלולים לאבד שליטה.
note-could-running-stopped = ייתכן שחלק עומד להישבר. אם הוא יישבר בזמן נסיעה, אתם עלולים לאבד שליטה.
note-could-rubber-play = הגומי עלול להיקרע עוד. אז הגל עלול להתנדנד, להכות ברכב ולפגוע בחלקים אחרים.
note-could-turns-badly = המיסב עלול להתחמם ולהיתפס או להישבר. אז הגל עלול להשתחרר.
note-could-shaft-damaged = הגל עלול לרעוד יותר ויותר. הרעידה עלולה לשבור את המיסב ואת המפרקים.
note-could-far-end-play = המפרק עלול להישחק עוד עד שהגל ישתחרר.
note-could-play-unsure = אם המיסב רופף, הגל עלול להשתחרר בזמן נסיעה.
note-could-bearing-likely = אם המיסב יקרוס, הגל עלול להשתחרר בזמן נסיעה.
note-could-cause-likely = התקלה עלולה להחמיר ולפגוע בחלקים אחרים.
note-could-cause-likely-misfire = התקלה עלולה להחמיר. היא עלולה לחמם יותר מדי חלק במערכת הפליטה, והחלק הזה יקר.
note-could-finding-unexplained = אי אפשר לדעת בוודאות. זו יכולה להיות תחילתה של תקלה שתחמיר.
note-could-cold-check-buzz = אם המיסב רופף כשהוא חם, הגל עלול להשתחרר בזמן נסיעה.
note-could-no-bearing-action = הרעש עשוי לחזור. כל חלק יכול להישחק עם הזמן.
note-could-unrated = עוד אי אפשר לדעת. אם המיסב רופף, הגל עלול להשתחרר בזמן נסיעה.

note-now-danger = אל תנהגו ברכב, גם לא הביתה. אל תתניעו את המנוע. השאירו אותו כאן, או דאגו שייקחו אותו על גבי גרר. בקשו מאיתנו מחיר לתיקון.
note-now-warning = אל תנהגו ברכב. דאגו שייקחו אותו לתיקון על גבי גרר, מנוע כבוי. אסור לגרור אותו על גלגלי ההינע.
note-now-caution = קבעו תור לתיקון. אם הרעש או הרעידה גוברים, עצרו והתקשרו אלינו.
note-now-notice = אין עכשיו עבודה לעשות במיסב. חזרו אם הרעש חוזר או נשמע אחרת.
note-now-unrated = תנו לנו לסיים את הבדיקה בידיים. עד אז איננו יכולים לומר אם מותר לכם לנהוג ברכב. אם הרכב נוקש או רועד יותר מקודם, עצרו והתקשרו אלינו.
note-now-repaired = שאלו אותנו אם מותר לנהוג שוב ברכב. אל תנהגו בו עד שנאמר זאת. אם הוא נוקש או רועד יותר מקודם, עצרו והתקשרו אלינו.

note-open-none = סיימנו כל חלק של הבדיקה הזאת. בדקנו רק את החלקים שבדוח שלנו.
note-open-play-vertical = לא בדקנו ביד אם הגל זז למעלה ולמטה.
note-open-play-lateral = לא בדקנו ביד אם הגל זז לצדדים.
note-open-tube-open-check = לא פתחנו את הצינור כדי לבדוק ביד את המיסבים שבו.
note-open-turn-by-hand = לא סובבנו את הגל ביד.
note-unsure-play-vertical = בדקנו ביד תנועה למעלה ולמטה, אבל איננו בטוחים.
note-unsure-play-lateral = בדקנו ביד תנועה לצדדים, אבל איננו בטוחים.
note-unsure-play-far-end = בדקנו ביד תנועה בקצה הרחוק, אבל איננו בטוחים.
note-unsure-tube-open-check = בדקנו ביד את המיסבים שבצינור, אבל איננו בטוחים.
note-disputed = שתי רשומות שלנו סותרות זו את זו. הגרועה מביניהן נחשבת.
note-open-others = { $count ->
    [one] בדיקה אחת לא נעשתה.
    [two] שתי בדיקות לא נעשו.
   *[other] { $count } בדיקות לא נעשו.
}
note-figure = היצרן אומר כמה תנועה מותרת. לא רשמנו את המספר הזה.
note-cold = בדקנו ביד כשהחלק קר. ייתכן שהוא רופף כשהוא חם.
note-not-reproduced = הפעלנו את המנוע ולא שמענו את הרעש.
note-not-listened = לא הפעלנו את המנוע כדי להקשיב, ולכן הרעש לא שוחזר.
note-ledger = ייתכן שהרישום שלנו על הבדיקה אינו שלם או שעבר שינוי. שאלו על כך את המוסך.

note-ask-technician = שאלו את המוסך שנתן לכם את הדף. השם על הבדיקה: { $technician }.
note-ask-workshop = שאלו את המוסך שנתן לכם את הדף.
note-ask-second = מותר לכם לבקש ממוסך נוסף לבדוק. כללי היצרן והחוק המקומי קודמים.

note-receipt-heading = אישור הקבלה שלכם
note-receipt-text = אתם חותמים רק על כך שקיבלתם את הדף. אפשר לבחור בכל אחת מהאפשרויות, ואפשר לשנות את דעתכם.
note-foot = דף לבעל הרכב. הוא מכסה מה שנבדק, כפי שהיה באותו יום.

short-head = { $vehicle }, { $date }: { $label }. { $headline }.
short-head-nameless = הרכב שלכם, { $date }: { $label }. { $headline }.
short-now-danger = גם לא הביתה. אל תתניעו את המנוע. השאירו אותו כאן, או דאגו שייקחו אותו על גבי גרר.
short-now-warning = דאגו שייקחו אותו לתיקון, מנוע כבוי. אסור לגרור אותו על גלגלי ההינע.
short-now-caution = אם הרעש או הרעידה גוברים, עצרו והתקשרו אלינו.
short-now-notice = חזרו אם הרעש חוזר או נשמע אחרת.
short-now-unrated = תנו לנו לסיים את הבדיקה בידיים. עד אז איננו יכולים לומר אם מותר לכם לנהוג ברכב.
short-more = יש עוד בדף המלא: בקשו אותו מאיתנו.

# תוויות של הנייר המודפס
paper-label-for = בעד:
paper-label-against = נגד:
paper-label-photo-missing = התמונה רשומה, אבל לא ניתן היה לקרוא את הקובץ שלה בזמן ההדפסה.
paper-label-photo-damaged = התמונה רשומה, אבל הקובץ שלה ניזוק או שונה מאז. היא לא מוצגת כאן ולא מוכיחה דבר עד שייובא עותק תקין.
paper-label-name = שם
paper-label-date = תאריך
paper-label-signature = חתימה
paper-label-page = עמוד { "{page}" } מתוך { "{pages}" }
