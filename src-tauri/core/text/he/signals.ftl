### מילים קצרות סביב הבדיקה: מילות אזהרה, סבירות, תחנות, מבנים, נעילות, רשומות היומן.

word-danger = סכנה
word-warning = אזהרה
word-caution = זהירות
word-notice = הודעה
word-unrated = עוד לא נבדק
headline-danger = אל תנהגו
headline-warning = אל תנהגו: רק על גבי גרר
headline-caution = קבעו תור לתיקון
headline-notice = אין צורך בטיפול במיסב
headline-unrated = הבדיקה בידיים עוד פתוחה

## סולם מילות הסבירות של ה־IPCC.
likelihood-virtually-certain = כמעט ודאי
likelihood-very-likely = סביר מאוד
likelihood-likely = סביר
likelihood-about-as-likely-as-not = סביר כמו לא סביר
likelihood-unlikely = לא סביר
likelihood-very-unlikely = מאוד לא סביר
likelihood-exceptionally-unlikely = לא סביר באופן חריג

station-seat = מושב הנהג
station-support = תמיכה
station-shaft = גל
station-far-end = קצה רחוק
station-around = סביב הגל
station-account = דברי הבעלים

layout-rigid-engine-speed = תמיכה קשיחה, סל״ד מנוע
layout-rigid-engine-speed-about = גל אחד מהמנוע לתיבת הילוכים בסרן האחורי. הוא מסתובב עם המנוע גם כשהרכב עומד. בדחיפה ובמשיכה ביד אסור לו לזוז כלל.
layout-rubber-centre = תמיכה מרכזית בגומי
layout-rubber-centre-about = גל דו־חלקי אחרי תיבת ההילוכים, והמיסב המרכזי שלו בטבעת גומי. מעט גמישות היא רגילה; נתון היצרן הוא הגבול.
layout-torque-tube = צינור מומנט
layout-torque-tube-about = גל בסל״ד המנוע בתוך צינור, על כמה מיסבים. אי אפשר לאחוז בו עד שפותחים את הצינור לפי הוראות היצרן.

seat-bare = מושב אלומיניום חשוף
seat-sleeved = מושב עם תותב פלדה
gearbox-automated-clutch = מצמד אוטומטי
gearbox-torque-converter = ממיר מומנט
gearbox-manual = ידנית

sound-buzz = זמזום
sound-knock = נקישה
sound-vibration = רעידה
sound-rattle = קרקוש
sound-pops = פצפוצים
sound-hiss = רחש
sound-whine = יללה

waiver-cannot-reach = המצלמה לא מגיעה לשם
waiver-too-dark = חשוך מדי לצילום
waiver-hands-busy = נדרשו שתי הידיים
waiver-nothing-to-see = אין מה לראות בתמונה
waiver-nothing-to-show = אין מה להראות, נרשם על ידי Steady עצמו
waiver-owner-declined = הבעלים לא רוצה תמונות
waiver-not-in-case = קובץ המקרה לא מציין תמונה

decision-repair = לתקן את הרכב
decision-decide-later = אחשוב על זה
decision-decline = להשאיר כמו שזה. הסיכון הוסבר לי

entry-opened = הרכב נכנס
entry-amended = הקליטה שונתה
entry-order-chosen = נבחר סדר
entry-gate-confirmed = תנאי אושר
entry-lift-said = שונה מה מחזיק את הרכב
entry-part-left = יצאו מהחלק, התנאים נסגרו
entry-answered = נענה
entry-photo-kept = תמונה נשמרה
entry-photo-waived = בלי תמונה, עם סיבה
entry-withdrawn = בוטל
entry-arranged = סודר בהרצה החוזרת
entry-received = הדף התקבל ונחתם
arranged-gates-confirmed = המקרה השמיט תנאים; ההרצה החוזרת אישרה אותם.
arranged-steps-ordered = המקרה נתן תשובות בסדר אחר; ההרצה החוזרת סידרה את השלבים.
arranged-times-set-back = המקרה אומר לפני כמה ימים זה היה; ההרצה החוזרת הזיזה את זמני הרשומות לאחור.

lock-gates-open = נעול: אשרו קודם את התנאים.
lock-other-part = נעול: צאו קודם מהחלק שאתם בו.
lock-gates-of-another = נעול: מישהו אחר אישר את תנאי החלק הזה. צאו ממנו ואשרו אותם בעצמכם.
lock-gates-too-old = נעול: תנאי החלק הזה אושרו לפני זמן רב מדי. צאו ממנו, הסתכלו שוב ואשרו אותם מחדש.
lock-not-driven = נעול: הרכב הזה אסור בנסיעה. התוצאה אומרת למה.
lock-set-apart = נעול: מה שנמצא במבנה אחר לא הוסדר. ענו מחדש, או בטלו בצירוף סיבה.
lock-earlier-danger = נעול: סכנה קודמת של הרכב הזה לא הוסדרה. קודם הבדיקה בידיים, במנוע כבוי.
lock-danger-found = נעול: נמצאה סכנה, ולכן לא מפעילים שוב את המנוע.

next-hands-on = רק הבדיקה בידיים קובעת.

part-leave-running = מנוע כבוי, יוצאים מהמושב
part-leave-creep = הרכב עומד, הבלם משוך
part-leave-lift = יצאנו מתחת לרכב

order-under-car-first = הכול, קודם מתחת לרכב
order-running-first = הכול, קודם המנוע
