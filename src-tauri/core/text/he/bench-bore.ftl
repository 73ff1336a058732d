### השולחן: צורת הקדח והתוכנית לחרוט אותו.
### bore-... ו־skim-... הן הערות שהולכות עם המספרים; error-bore-... הן סירובים.

bore-at-line = { $phrase } (שורה { $line })

## מה ששיטת מדידה לא יכולה לראות

bore-two-point-blind = שני מגעים נגדיים לא רואים שלוש, חמש או כל מספר אי־זוגי של אונות: קדח עם שלוש אונות של 16 מיקרון יכול להיקרא עגול. סרקו בשעון או קחו קואורדינטות לפני שאומרים עגול.
bore-three-point-blind = שלושה מגעים ב־120 מעלות רואים רק אונות בשלשות: שלוש, שש, תשע. אליפסה נקראת עגולה. קראו בשני מגעים או סרקו בשעון לפני שאומרים עגול.
bore-no-centre = המד הזה לא יודע איפה הציר. אם הקדח זז ממקומו או נוטה, זה לא נמדד.
bore-size-unknown = השעון מעולם לא כוון למידה ידועה, ולכן הקוטר לא נמדד. הצורה והקוניות כן.
bore-one-depth = עומק אחד לבדו לא אומר דבר על קוניות. קראו לפחות בשני קצות המושב.
bore-one-angle = מעט מדי זוויות כדי לראות אונות: מידה ממוצעת ולא יותר.
bore-lobes-beyond = { $angles } זוויות מראות עד { $lobes } אונות. יותר מכך, כמו סימני רעד של הסכין, לא נבדל מפחות.
bore-gap = הרווח הגדול בין זוויות הוא { $gap } מעלות, בעומק { $depth }. בליטה או מכה בתוך רווח לא נמדדות.
bore-flagged = הקריאה בזווית { $angle } מעלות, עומק { $depth }, לא מתאימה לאחרות. בכל זאת השתמשו בה. נקו את המקום, קראו שוב והחליפו רק אם הקריאה החדשה שונה.
bore-few-for-flagging = עם פחות מ־{ $fewest } זוויות בעומק אי אפשר להבדיל בין טעות קריאה לבין צורה.
bore-below-floor = בעומק { $depth } אי־העגוליות אינה יותר ממה שקדח מושלם היה מראה במכשיר הזה, בערך { $floor }. כדי לומר יותר דרוש מכשיר עדין יותר.
bore-repeatability-untried = לא נתנו קריאות חוזרות של נקודה אחת, ולכן פיזור היד לא נכלל באי־הוודאות. קראו נקודה אחת עשר פעמים ותנו את סטיית התקן.

## תקציב של קריאה אחת

bore-budget-resolution = רזולוציה: צעד אחד חלקי השורש של 12 (GUM F.2.2.1)
bore-budget-mpe = שגיאה מרבית מותרת: חלקי השורש של 3 (GUM 4.3.7). משותפת לכל הקריאות למידה, ולכל קריאה משלה לצורה
bore-budget-repeatability = הדירות: סטיית התקן של קריאות חוזרות (GUM 4.2)
bore-budget-reading = קריאה אחת: שורש סכום הריבועים (GUM 5.1.2). התוצאות נושאות פעמיים את אי־הוודאות התקנית שלהן, בערך 95%

## תוכנית החריטה

skim-verdict-skim = הוא מתנקה אחרי { $passes } מעברים והדופן שנותרת מספיקה, כולל אי־הוודאות. הקצו { $allow } מעברים; עצרו במעבר { $safe } ולא משנה מה המגע מראה.
skim-verdict-skim-ample = הוא מתנקה אחרי { $passes } מעברים והדופן שנותרת מספיקה בהרבה, כולל אי־הוודאות. הקצו { $allow } מעברים; אם עדיין לא נקי, מדדו שוב לפני שממשיכים לחרוט.
skim-verdict-wall-unknown = הוא מתנקה אחרי { $passes } מעברים; הקצו { $allow }. לא ידוע אם הדופן שנותרת מספיקה: לפני החיתוך הראשון מדדו את הדופן הדקה ביותר ובררו אצל היצרן כמה חייבת להישאר.
skim-verdict-wall-undecided = הוא מתנקה אחרי { $passes } מעברים, אבל הדופן שנותרת קרובה למינימום הדרוש בתוך אי־הוודאות שלה. אל תחרטו על סמך זה: מדדו דופן וקדח במכשיר עדין יותר.
skim-verdict-scrap = עצרו ופסלו: אחרי { $passes } מעברים הוא היה מתנקה, אבל הדופן הייתה דקה מדי. המעבר האחרון שבוודאות משאיר מספיק הוא מספר { $safe }.
skim-at-least = שני מגעים נגדיים לא רואים אונות אי־זוגיות, ולכן החיתוך הוא לפחות זה. סרקו בשעון או קחו קואורדינטות לפני שסומכים עליו.
skim-axis-moves = הציר החופשי נמצא במרחק { $shift } מהבסיס. המיסב והגל זזים איתו: השוו לנתון היצרן לפני שחורטים.
skim-axis-unseen = התוכנית מניחה ציר ישר אחד דרך אמצע כל עומק. המד הזה לא יודע איפה הוא.
skim-flagged = קריאה סומנה כלא מתאימה לאחרות והיא בתוכנית הזאת. קראו אותה שוב לפני שחורטים.
skim-size-unknown = השעון מעולם לא כוון למידה ידועה, ולכן התוכנית נותנת חיתוכים בלי קטרים.
skim-between = רק העומקים והזוויות שנקראו נכללים בתוכנית. הביטו במגע על הקדח עצמו: הוא נקי כשהסכין נגעה בכל ההיקף.
skim-caution = הגנו מפני שבבים, הרכיבו הגנת עיניים, הדקו בלי לעקם את הבית, ומדדו קר. הוראות היצרן קודמות לתוכנית הזאת.

## סירובים

error-bore-empty = אין קריאות בקובץ הקדח
error-bore-empty-help = כתבו שורת כותרת, שורה של שמות עמודות, ומתחתיהן קריאה אחת בשורה.
error-bore-no-header = קובץ הקדח לא מתחיל בכותרת שלו
error-bore-no-header-help = התחילו את השורה הראשונה במילה bore, אחריה kind, unit, resolution ו־mpe, כמו { "\u2066bore,kind=two-point,unit=mm,resolution=0.001,mpe=0.004\u2069" }.
error-bore-header-word = מילה בכותרת לא מוכרת, מופיעה פעמיים, או לא שייכת לסוג הזה
error-bore-header-word-help = השתמשו ב־kind, unit, resolution, mpe, repeatability, turn, wall, wall-error ו־seat; ב־zero-diameter, zero ו־higher רק לשעון.
error-bore-header-missing = חסרה מילה בכותרת
error-bore-header-missing-help = תנו kind, unit, resolution ו־mpe. לשעון גם zero-diameter, zero=set או zero=nominal, ו־higher=wider או higher=narrower.
error-bore-kind-unknown = סוג המדידה לא מוכר
error-bore-kind-unknown-help = כתבו kind=two-point, kind=three-point, kind=dial או kind=coordinates.
error-bore-unit-unknown = היחידה לא מוכרת
error-bore-unit-unknown-help = כתבו unit=mm, unit=um, unit=in או unit=thou.
error-bore-columns = שורת שמות העמודות לא מתאימה לסוג
error-bore-columns-help = ציינו depth_mm או depth_in, ואז angle_deg ו־diameter; לשעון angle_deg ו־reading; לקואורדינטות x ו־y.
error-bore-cell-count = בשורה יש יותר מדי או פחות מדי תאים
error-bore-cell-count-help = תנו תא אחד לכל שם עמודה, וכתבו הערות בשורות משלהן שמתחילות ב־#.
error-bore-not-a-number = תא אינו מספר
error-bore-not-a-number-help = כתבו מה שהמכשיר הראה, בספרות עם נקודה עשרונית. מחקו את השורה אם לא נקרא דבר.
error-bore-decimal-comma = במספר יש פסיק עשרוני
error-bore-decimal-comma-help = כתבו נקודה עשרונית, 72.013 ולא 72,013, או הפרידו תאים בנקודה־פסיק או בטאב: אז פסיק עשרוני נקרא.
error-bore-mixed-units = קריאה ביחידה אחרת מזו שבכותרת
error-bore-mixed-units-help = המירו כל קריאה ליחידה שבכותרת, וכתבו אותה בלי יחידה אחריה.
error-bore-instrument = המכשיר לא מתואר ככזה שיכול למדוד קדח
error-bore-instrument-help = תנו resolution ו־mpe מעל אפס ומתחת ל־1 מ״מ, מהמכשיר או מהתעודה שלו. אפשר להשמיט את ההדירות.
error-bore-size-implausible = לאף מושב מיסב אין מידה כזאת
error-bore-size-implausible-help = בדקו את היחידה בכותרת. מתקבלים קטרים מ־1 עד 1,000 מ״מ.
error-bore-too-few-angles = יש פחות זוויות ממה שהצורה דורשת
error-bore-too-few-angles-help = בכל עומק קראו לפחות 3 קטרים בשני מגעים, 1 בשלושה מגעים, או 5 נקודות בשעון או בקואורדינטות; 12 מראות הרבה יותר.
error-bore-angle-repeated = זווית מופיעה פעמיים בעומק אחד
error-bore-angle-repeated-help = השאירו קריאה אחת לכל זווית. קוטר בשני מגעים זהה אחרי חצי סיבוב, ובשלושה מגעים אחרי שליש סיבוב; השמיטו את הקריאה הסוגרת ב־360 מעלות.
error-bore-too-many-readings = יש יותר קריאות ממה שאפשר לקלוט
error-bore-too-many-readings-help = עד 20,000 בעומק אחד ו־100,000 בסך הכול.
error-bore-not-round = אף מעגל לא עובר קרוב לנקודות
error-bore-not-round-help = בדקו ש־x ו־y הן נקודות של הדופן בכל ההיקף, ביחידה שבכותרת.
error-bore-wall-negative = עובי דופן קטן מאפס
error-bore-wall-negative-help = תנו את הדופן הדקה ביותר כפי שהיא עכשיו, ואת המינימום שחייב להישאר, שניהם מ־0 ומעלה.
error-bore-wall-missing = הדופן כפי שהיא עכשיו לא ידועה
error-bore-wall-missing-help = מדדו את הדופן הדקה ביותר סביב הקדח ותנו אותה עם הקריאות.
error-bore-pass-depth = עומק המעבר אינו חריטת ניקוי
error-bore-pass-depth-help = תנו את המעבר על הקוטר, מעל 0 ועד 2 מ״מ, כמו { "\u20660.001in\u2069" } או { "\u20660.025mm\u2069" }.
error-bore-too-many-passes = זה היה דורש יותר מ־400 מעברים
error-bore-too-many-passes-help = תנו מעבר עמוק יותר. אם החיתוך גדול כי הבסיס אינו ציר הקדח, התכווננו לפי הקדח או השתמשו בציר חופשי.
error-bore-no-datum = הקריאות לא מכירות ציר בסיס
error-bore-no-datum-help = סרקו בשעון סביב הבסיס, או קחו קואורדינטות שהבסיס הוא הראשית שלהן. במד דו־נקודתי השתמשו בציר חופשי.
error-bore-cannot-see-oval = שלושה מגעים לא רואים אליפסה, ולכן אי אפשר לתכנן מהם חיתוך
error-bore-cannot-see-oval-help = קראו קטרים בשני מגעים בכמה זוויות, או עדיף לסרוק בשעון, ותכננו לפי זה.
