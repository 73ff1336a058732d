### פסיקת השולחן, ותנאי הבטיחות של חלק השולחן.

verdict-bearings-only = מיסבים חדשים במושב כפי שהוא.
verdict-skim-and-sleeve = לחרוט את המושב ולכבוש תותב.
verdict-replace-housing = להחליף את בית המיסב.
verdict-open = עוד אין פסיקה: משהו שקובע לא נמדד.
verdict-at-least-bearings-only = כל תוצאה עדיין אפשרית.
verdict-at-least-skim-and-sleeve = מיסבים חדשים לבדם נשללו.
verdict-at-least-replace-housing = תיקון קטן יותר נשלל.

verdict-why-cracked = הבית סדוק.
verdict-why-wall-too-thin = אחרי שלתותב יש מקום, תישאר פחות דופן ממה שחייב להישאר.
verdict-why-out-of-round = מוכח שהמושב לא עגול.
verdict-why-roundness-not-decided = לא הוכרע אם המושב עגול: מדדו עדין יותר.
verdict-why-ring-turned = המיסב הסתובב בתוך הקדח שלו.
verdict-why-loose-hot = המיסב החדש יהיה רופף במושב החם.
verdict-why-too-tight = האפיצות תלחץ על הבית קרוב מדי לגבול הכניעה שלו.
verdict-why-seat-sound = המושב עגול, הדוק ותקין.

verdict-missing = לא נמדד או לא נבדק במבט: { $gaps }.
verdict-gap-cracks = אם הבית סדוק
verdict-gap-ring-marks = סימנים של מיסב שהסתובב בתוך הקדח שלו
verdict-gap-diameter = קוטר המושב
verdict-gap-roundness = עגוליות המושב, עם אי־הוודאות שלה
verdict-gap-hot-fit = האפיצות בטמפרטורה הגבוהה ביותר
verdict-gap-stress = המאמץ בבית מהאפיצות
verdict-gap-clean-up = החיתוך שמנקה בכל ההיקף
verdict-gap-clean-diameter = הקוטר שבו הקדח היה נקי בכל ההיקף
verdict-gap-wall-left = הדופן כפי שהיא, מדודה מספיק כדי לומר מה נותר
verdict-gap-wall-least = הדופן שחייבת להישאר

verdict-gates = לפני העבודה הזאת, אשרו את הבדיקות של { $sets }.
verdict-gates-machining = החיתוך
verdict-gates-heat = החימום והקירור
verdict-gates-refit = ההרכבה מחדש

closing-turns-freely = אחרי ההרכבה, בדקו שהמיסב מסתובב חופשי ביד, בלי מקום קשה. צלמו ורשמו. אם לא, פרקו שוב.

## תנאים. gates-SET הוא שם הקבוצה, gates-SET-why אומר למה כדאי להקדיש לזה חצי דקה.
gates-teardown = לפני שמשהו כבד יורד
gates-teardown-why = רכב על שני עמודים מתהפך כשמשקלו זז. מנוע ותיבת הילוכים נופלים כשהתומכים שלהם משתחררים. רק אנשים שהוכשרו והוסמכו; הכללים המקומיים שלכם קודמים.
gate-teardown-lift-gates-hold = כל מה שאושר לפני שנכנסו מתחת עדיין נכון: נעילות, מעמדים, מנוע כבוי, מפתח רחוק.
gate-teardown-stands-and-straps = מעמדי ביטחון במקום והרכב קשור לליפט.
gate-teardown-engine-and-gearbox-held = המנוע ותיבת ההילוכים נתמכים מלמטה לפני שמשחררים את התומכים שלהם.
gate-teardown-shaft-marked = מקומו של הגל מסומן בשני קצותיו.
gate-teardown-maker-procedure = הוראות היצרן לפירוק נמצאות בהישג יד ופועלים לפיהן.
gate-teardown-high-voltage = מתח גבוה, אם יש, נותק על ידי בעלי הסמכה לפני שצינור או גל יוצא.

gates-heat = לפני שמחממים או מקררים משהו
gates-heat-why = חום הורס אטמים ומרכך סגסוגת בלי להראות זאת. קרח יבש וחנקן נוזלי שורפים עור ודוחקים חמצן. רק אנשים שהוכשרו והוסמכו; הכללים המקומיים שלכם קודמים.
gate-heat-limits-known = גבולות האטמים, הגריז והבית ידועים, ומד חום מונח על החלק.
gate-heat-no-flame = בלי להבה: תנור, פלטה חמה או אוויר חם, אחיד מסביב.
gate-heat-cold-ventilated = מיסבים אטומים נכנסים למקפיא, עד 40 מעלות מתחת לאפס ולא קר יותר. חומרים קרים יותר רק היכן שהיצרן מתיר והאוויר נע חופשי: הם דוחקים חמצן.
gate-heat-gloves = כפפות לחום ולקור והגנת עיניים מורכבות.

gates-machining = לפני שהסכין מסתובבת
gates-machining-why = שבבי סגסוגת קלה עפים וחותכים, שבבי מגנזיום בוערים, וציר מסתובב תופס בד. רק אנשים שהוכשרו והוסמכו; הכללים המקומיים שלכם קודמים.
gate-machining-clamped = הבית מהודק על הבסיס שלו ולא יכול לזוז.
gate-machining-swarf-guarded = המגנים סגורים, ומיסבים ותעלות שמן מכוסים. מגנזיום: כלים חדים, בלי מים, מטף מסוג D בהישג יד.
gate-machining-eyes-covered = משקפי מגן על העיניים.
gate-machining-sleeves-tied = בלי כפפות ליד הציר המסתובב. בגדים רפויים, שרוכים ושיער אסופים לאחור.
gate-machining-spindle-stopped = הציר עומד לפני שמודדים משהו.

gates-refit = לפני שהרכב חוזר לגלגליו
gates-refit-why = ברגים שנפתחו הם אלה שמשתחררים. רק אנשים שהוכשרו והוסמכו; הכללים המקומיים שלכם קודמים.
gate-refit-new-fasteners = ברגים שהיצרן דורש חדשים הם חדשים.
gate-refit-maker-torque = כל אחד במומנט של היצרן, בסדר של היצרן.
gate-refit-turns-freely = הגל מסתובב חופשי ביד.
gate-refit-running-gates = לפני ההתנעה הראשונה מאשרים שוב את התנאים למנוע עובד.

gates-press = לפני שכובשים משהו
gates-press-why = חלק שמשתחרר מתחת למכבש עף כמו קליע. רק אנשים שהוכשרו והוסמכו; הכללים המקומיים שלכם קודמים.
gate-press-ring-fitted = המכבש לוחץ רק על הטבעת שמרכיבים.
gate-press-housing-supported = הבית נתמך ישר, ממש מתחת למושב המיסב.
gate-press-guarded = המכבש ממוגן, איש לא עומד בקו שלו, ולא משתמשים בפטיש.
gate-press-force = הכבישה נעצרת כשהכוח עולה על מה שחושב.
verdict-gates-press = הכבישה
