### מה שהכללים השניים הוסיפו: שלבים ותשובות לתמיכות גומי, מחברים וקרקוש בסרק, מבנים, סיבות,
### סיבות לדירוג, ומה דירוג לא מכסה.

step-at-support = { $step } (תמיכה { $number })
reason-at-support-1 = בתמיכה הראשונה, הקרובה לתיבת ההילוכים.
reason-at-support-1-owner = זה המיסב הראשון של הגל.
reason-at-support-2 = בתמיכה השנייה.
reason-at-support-2-owner = זה המיסב השני של הגל.
reason-at-support-3 = בתמיכה השלישית.
reason-at-support-3-owner = זה המיסב השלישי של הגל.

## שלבים.
step-support-look = מבט על תמיכת הגומי
step-support-look-do = האירו את טבעת הגומי מסביב, משני הצדדים. הביטו בתושבת ובברגים שלה. סמנו במסך מה שמצאתם.
step-support-look-watch = אגזוז חם קרוב. אל תיתלו על התושבת. אל תיגעו בכבלים כתומים. הוראות היצרן קודמות.
step-clutch-pedal-effect = דוושת המצמד לחוצה
step-clutch-pedal-effect-do = תיבת ההילוכים בניוטרל, המנוע בסרק. לחצו על דוושת המצמד עד הסוף. האם הקרקוש נעלם? שחררו.
step-clutch-pedal-effect-watch = הישארו במושב, נשארים בניוטרל. רגל מוכנה ליד הבלם. הוראות היצרן קודמות.
step-selector-effect = העברת הבורר לנסיעה
step-selector-effect-do = רגל חזק על הבלם, המנוע בסרק. העבירו לנסיעה לשלוש שניות. האם הקרקוש נעלם? חזרה לפארק.
step-selector-effect-watch = הרכב מושך: הבלם לחוץ, בלם החניה משוך, אין איש לפנים או מאחור. הוראות היצרן קודמות.
drawing-support-look = טבעת הגומי סביב המיסב והתושבת שמחזיקה אותה, מוארות מלמטה.
drawing-clutch-pedal-effect = רגל לוחצת על דוושת המצמד עד הסוף כשהמנוע בסרק.
drawing-selector-effect = רגל מחזיקה את הבלם בזמן שהבורר עובר מפארק לנסיעה.

## תשובות.
answer-not-seen = לא ניתן לראות
answer-crazed = סדקים דקים
answer-torn = קרוע
answer-torn-through = קרוע לגמרי
answer-off-centre = שקוע או לא במרכז
answer-oil-soaked = ספוג שמן
answer-bracket-cracked = תושבת סדוקה
answer-springy = קפיצי: אין נתון ידוע
answer-knocks = נוקש: מגיע לעצר
answer-slides = מחליק רק לאורך הגל
answer-bolt-loose = בורג רופף
answer-bolt-missing = בורג חסר
answer-boot-torn = מגן גומי קרוע
answer-joint-stiff = מפרק קשה
answer-touches-fibre = נוגע בגל סיבים
answer-support-look-sound = תקין מסביב
answer-clutch-pedal-effect-gone = הקרקוש נעלם
answer-clutch-pedal-effect-less = פחות
answer-clutch-pedal-effect-same = אותו דבר
answer-selector-effect-gone = הקרקוש נעלם
answer-selector-effect-less = פחות
answer-selector-effect-same = אותו דבר
answer-play-far-end-unsure = יש ספק

## מבנים.
layout-rigid-output-speed = תמיכה קשיחה, סל״ד יציאה
layout-rigid-output-speed-about = גל דו־חלקי אחרי תיבת ההילוכים, והמיסב המרכזי שלו מוחזק קשיח. הוא עומד בניוטרל. בדחיפה ובמשיכה ביד אסור לו לזוז כלל.
layout-two-centres = שתי תמיכות מרכזיות בגומי
layout-two-centres-about = גל תלת־חלקי אחרי תיבת ההילוכים עם שני מיסבים מרכזיים בטבעות גומי. כל אחד נבדק לחוד; הראשון הוא הקרוב לתיבת ההילוכים.
layout-one-piece = חלק אחד, בלי מיסב מרכזי
layout-one-piece-about = גל אחד מתיבת ההילוכים לסרן האחורי, מפרק בכל קצה ואין דבר ביניהם. מה שקובע הוא החופש בקצוות.
layout-front-shaft = גל קדמי, הנעה כפולה
layout-front-shaft-about = גל מתיבת ההעברה לסרן הקדמי, מפרק בכל קצה. מה שקובע הוא החופש בקצוות.
layout-half-shaft = חצי גל עם תמיכה
layout-half-shaft-about = חצי גל אל גלגל קדמי, והמיסב שלו בתושבת ליד תיבת ההילוכים. הוא עומד בניוטרל. בדחיפה ובמשיכה ביד אסור לו לזוז כלל.
drawing-none = גל עם מפרק בכל קצה ובלי מיסב ביניהם.

## סיבות.
cause-torsional-rattle = קרקוש בסרק של גלגל תנופה, מצמד או גלגלי שיניים
cause-torsional-rattle-about = גלגלי שיניים או חלקי מצמד מקרקשים כשהמנוע בסרק. המיסב לא קשור לזה.
cause-wheel-or-tyre = גלגל או צמיג
cause-wheel-or-tyre-about = גלגל או צמיג לא מאוזן או לא עגול ומרעיד את הרכב.
cause-joint-angle-or-balance = זווית מפרק או איזון הגל
cause-joint-angle-or-balance-about = הגל מסתובב בזווית שגויה או לא מאוזן, וזה מרעיד את הרכב.
cause-misfire-next = החליפו סליל או מצת בין שני צילינדרים ובדקו אם התקלה עוברת איתם. אחר כך בדקו את איזון המזרקים, ואז דחיסה.
cause-torsional-rattle-next = בדקו חופש בגלגל התנופה וקפיצים שבורים בטבור המצמד לפני שמאשימים את תיבת ההילוכים.
cause-wheel-or-tyre-next = אזנו את הגלגלים, בדקו סטייה בצמיגים ובחישוקים, וסעו שוב באותה דרך באותה מהירות.
cause-joint-angle-or-balance-next = מדדו את זוויות המפרקים בגובה נסיעה והשוו לנתוני היצרן. בדקו את מופע המפרקים ואת משקולות האיזון.

## סיבות לדירוג.
rule-support-broken = תמיכת הגומי קרועה לגמרי, התושבת שלה סדוקה, או שבורג שלה רופף.
rule-support-broken-owner = החלק שמחזיק את המיסב קרוע לגמרי, סדוק או רופף.
rule-support-torn = הגומי של התמיכה קרוע.
rule-support-torn-owner = טבעת הגומי שמחזיקה את המיסב קרועה.
rule-support-ageing = תמיכת הגומי לא במרכז, ספוגה בשמן או מלאה סדקים דקים.
rule-support-ageing-owner = טבעת הגומי שמחזיקה את המיסב ישנה, שמנונית או לא במקומה.
rule-coupling-bolts = בורג של מחבר רופף או חסר.
rule-coupling-bolts-owner = בורג שמחזיק את הגל רופף או חסר.
rule-mount-broken = תומך של המנוע או של תיבת ההילוכים שבור.
rule-mount-broken-owner = חלק שמחזיק את המנוע או את תיבת ההילוכים שבור.
rule-touches-fibre = משהו נוגע בגל סיבים.
rule-touches-fibre-owner = הגל עשוי סיבים, ומשהו מתחכך בו.
rule-far-end-unsure = לא ניתן לשלול תנועה בקצה הרחוק של הגל. בדקו שוב ביד כשאדם שני מביט במפרק.
rule-far-end-unsure-owner = בדקנו ביד תנועה בקצה הרחוק של הגל ואיננו בטוחים.
rule-drag-unchecked = יש רחש או המיה, והגל לא סובב לבדו: לא ידוע אם המיסב מסתובב בכבדות. סובבו אותו מנותק.
rule-drag-unchecked-owner = יש רחש או המיה, ועוד לא סובבנו את הגל לבדו.
rule-bearing-likely-suspected = תקלה במיסב סבירה לפחות 50% לפי מה שנשמע: חשד, לא אושר בידיים. הוא יאושר בחופש שהורגש כשחם, בסיבוב מנותק, או בשעון מדידה.
rule-bearing-likely-suspected-owner = מה ששמענו יכול לבוא מהמיסב. לא הרגשנו שם ביד שום דבר פגום.

rule-no-bearing-action-play = לא הורגש חופש, ולא נמצא דבר נוסף.
rule-no-bearing-action-play-owner = בדקנו את המיסב ביד. הוא לא זז יותר מכפי שהוא אמור, ולא מצאנו תקלה.
rule-no-bearing-action-play-not-reproduced = לא שוחזר: לא נשמע דבר. לא הורגש חופש, ולא נמצא דבר נוסף.
rule-no-bearing-action-play-not-reproduced-owner = הרעש לא שוחזר: הוא לא הופיע כשהרכב היה אצלנו. בדקנו ביד אם יש תנועה ולא מצאנו תקלה.
rule-no-bearing-action-play-not-listened = לא שוחזר: לא נעשתה בדיקה במנוע עובד. לא הורגש חופש, ולא נמצא דבר נוסף.
rule-no-bearing-action-play-not-listened-owner = הרעש לא שוחזר: לא הפעלנו את המנוע כדי להקשיב. בדקנו ביד אם יש תנועה ולא מצאנו תקלה.

rule-no-bearing-action-ends = לא הורגש חופש בקצות הגל, ולא נמצא דבר נוסף.
rule-no-bearing-action-ends-owner = בדקנו ביד את שני קצות הגל ולא מצאנו בהם תקלה.
rule-no-bearing-action-ends-not-reproduced = לא שוחזר: לא נשמע דבר. לא הורגש חופש בקצות הגל, ולא נמצא דבר נוסף.
rule-no-bearing-action-ends-not-reproduced-owner = הרעש לא שוחזר: הוא לא הופיע כשהרכב היה אצלנו. בדקנו ביד את שני קצות הגל ולא מצאנו בהם תקלה.
rule-no-bearing-action-ends-not-listened = לא שוחזר: לא נעשתה בדיקה במנוע עובד. לא הורגש חופש בקצות הגל, ולא נמצא דבר נוסף.
rule-no-bearing-action-ends-not-listened-owner = הרעש לא שוחזר: לא הפעלנו את המנוע כדי להקשיב. בדקנו ביד את שני קצות הגל ולא מצאנו בהם תקלה.
note-means-shaft-ends = גל ההינע מעביר את כוח המנוע לגלגלים. מפרק בכל קצה מחזיק אותו.
note-open-play-far-end = לא בדקנו ביד תנועה בקצות הגל.

note-could-support-broken = המיסב עלול ליפול בזמן נסיעה. אז הגל עלול להכות ברכב או בכביש. אתם עלולים לאבד שליטה.
note-could-support-torn = הגומי עלול להיקרע לגמרי. אז הגל עלול להתנדנד, להכות ברכב ולפגוע בחלקים אחרים.
note-could-support-ageing = מצב הגומי עלול להחמיר, ואז הגל עלול להתנדנד.
note-could-coupling-bolts = המפרק עלול להתפרק בזמן נסיעה. אז הגל עלול להכות ברכב או בכביש. אתם עלולים לאבד שליטה.
note-could-mount-broken = המנוע עלול לזוז יותר מדי. זה עלול לשבור את מפרקי הגל.
note-could-touches-fibre = הסיבים עלולים להיחתך במקום החיכוך. אז הגל עלול להישבר בזמן נסיעה.
note-could-far-end-unsure = אם המפרק רופף, הוא עלול להישחק עוד עד שהגל ישתחרר.
note-could-drag-unchecked = אם המיסב מסתובב בכבדות, הוא עלול להתחמם ולהישבר.

## מה דירוג לא מכסה.
limit-turn-by-hand = חופש בלבד; לא נבדק אם המיסב מסתובב בכבדות.
limit-turn-by-hand-owner = לא בדקנו אם המיסב מסתובב בכבדות.
limit-housing-look = בית המיסב לא נבדק במבט, או לא כולו.
limit-housing-look-owner = לא ראינו את כל החלק שמחזיק את המיסב.
limit-support-look = תמיכת הגומי לא נבדקה במבט, או לא כולה.
limit-support-look-owner = לא ראינו את כל חלק הגומי שמחזיק את המיסב.
limit-no-figure = אין נתון ידוע, נשפט לפי תחושה.
limit-no-figure-owner = הגבול של היצרן לא ידוע לנו. שפטנו את גמישות הגומי לפי תחושה.
limit-tube-closed = דורג מבחוץ: הצינור סגור, והמיסבים שבו לא נבדקו ביד.
limit-tube-closed-owner = הצינור שסביב הגל עדיין סגור. הבטנו והקשבנו מבחוץ בלבד.
limit-tube-nothing = עוד לא נבדק, ולא נמצא דבר מבחוץ.
limit-tube-nothing-owner = עד עכשיו לא מצאנו דבר מבחוץ.
unknown-limit = { $step }: { $lack }

detail-degrees = נבדק ביד ב־{ $degrees } מעלות צלזיוס
detail-engine-warm = נקרא כשהמנוע חם
detail-engine-cold = נקרא כשהמנוע קר: לא נספר לסיבות
detail-heard-front = הכי חזק מלפנים
detail-heard-middle = הכי חזק באמצע
detail-heard-rear = הכי חזק מאחור
detail-heard-all-along = חזק באותה מידה לכל אורך הרכב

next-free-turn = נתקו את הגל וסובבו אותו לבדו: כך רואים אם המיסב מסתובב בכבדות.
next-far-end = הקצה הרחוק נשאר לא בטוח: הביטו במפרק שלו.
next-unsure = זה נשאר לא בטוח: בדקו שוב ביד כשאדם שני מביט במפרק.

error-temperature-out-of-range = הטמפרטורה מחוץ לתחום
error-temperature-out-of-range-help = הזינו מעלות צלזיוס, ממינוס 40 עד 150, או קר או חם.
error-figure-missing = נתון התנועה של היצרן לא נרשם
error-figure-missing-help = הזינו את נתון היצרן, או ענו מה היד הרגישה: ״קפיצי״ כשנע וחוזר, ״נוקש״ כשמגיע לעצר, ״יש ספק״ כשאי אפשר לדעת.

road-boot = מגן גומי של מפרק. מדריך MOT (UK) 6.1.7 (g): ליקוי קל אם בלוי מאוד, ליקוי חמור אם חסר, קרוע או לא מהודק כך שלכלוך נכנס; אין בשורה הזאת ליקוי מסוכן. דירקטיבה 2014/45 של האיחוד האירופי, נספח I, 6.1.7 (g): ליקוי קל אם בלוי מאוד, ליקוי חמור אם חסר או סדוק. Steady לא בוחר; הכללים המקומיים שלכם קובעים.

## מה ששואלים ליד תשובה.
ui-free-yes = מנותק
ui-engine = מנוע חם או קר?
ui-engine-warm = מנוע חם
ui-engine-cold = מנוע קר
ui-feel-anew = עשו שוב והזינו מה אתם מרגישים עכשיו.
ui-heard-at = היכן הכי חזק?
ui-heard-front = קדימה
ui-heard-middle = באמצע
ui-heard-rear = מאחור
ui-heard-all-along = שווה לכל האורך
ui-temperature-degrees = חום בית המיסב, מעלות צלזיוס
ui-degrees = { $degrees } מעלות צלזיוס
ui-limits = לא בדירוג הזה
ui-support-none = אין מיסב בין הקצוות
ui-figure = נתון היצרן, מ״מ
ui-figure-keep = שמירת הנתון
ui-basis = מאיפה המספר
ui-earlier-rules = הרכב הזה נכנס לפי כללים { $then }; הדירוג המוצג הוא לפי כללים { $now }.
ui-cause-next = הבא: { $what }

## איך עושים שלב בתמיכה מסוג מסוים; בלי ניסוח משלו, כמו בכל מקום.
step-play-vertical-do-rubber = אחזו בגל קרוב למיסב. דחפו למעלה, הניחו לרדת. הביטו במיסב מול התושבת שלו. נע וחוזר: קפיצי. מגיע לעצר: נוקש.
step-play-lateral-do-rubber = אחזו בגל קרוב למיסב. דחפו שמאלה, משכו ימינה. הביטו במיסב מול התושבת שלו. נע וחוזר: קפיצי. מגיע לעצר: נוקש.
step-play-far-end-do-none = אחזו בגל בקצה אחד, ואז בשני. דחפו למעלה ולמטה, אחר כך לצדדים. הביטו בכל מפרק. החלקה לאורך הגל רגילה במפרק החלקה או במזלג החלקה.
next-warm = נבדק קר, וזה לא שולל דבר: בדקו שוב ביד כשבית המיסב חם.
