### הסיבות לדירוג: rule-ID לאנשי המקצוע, rule-ID-owner לבעל הרכב, שאולי אינו מכיר את החלקים.

rule-movement-at-support = תנועה במקום שאינה מותרת, שהורגשה ביד או הוכחה בשעון מדידה: הגל זז במיסב.
rule-movement-at-support-owner = הרגשנו או מדדנו שהגל זז במיסב שלו. אסור לו לזוז שם בכלל.
rule-housing-broken = בית המיסב סדוק, או שאחד הברגים שלו רופף.
rule-housing-broken-owner = החלק שמחזיק את המיסב סדוק, או שבורג בו רופף.
rule-coupling-failing = מחבר של הגל עומד להישבר.
rule-coupling-failing-owner = מפרק על הגל קרוב לשבירה.
rule-shaft-fibre-damaged = הסיבים של הגל פגומים.
rule-shaft-fibre-damaged-owner = גל הסיבים פגום. הוא יכול להישבר בלי אזהרה.
rule-running-stopped = היה צורך לכבות את המנוע בגלל נקישה כבדה או רעידה חזקה.
rule-running-stopped-owner = נאלצנו לכבות את המנוע בגלל נקישה כבדה או רעידה חזקה.

rule-rubber-play = תמיכת הגומי מגיעה לעצר או נעה יותר מהמותר לפי היצרן, או שהורגשה תנועה.
rule-rubber-play-owner = המיסב זז בטבעת הגומי שלו. הוא זז יותר מהמותר, או שאיננו יודעים כמה מותר.
rule-turns-badly = הגל מסתובב מחוספס או מתנגד ביד.
rule-turns-badly-owner = הגל לא מסתובב חופשי ביד.
rule-shaft-damaged = בגל יש מכה, או שחסרה משקולת איזון.
rule-shaft-damaged-owner = בגל יש מכה, או שחסרה משקולת קטנה שמאזנת אותו.
rule-far-end-play = הורגשה תנועה לרוחב הגל, או נקישה, בקצהו הרחוק.
rule-far-end-play-owner = הגל רופף בקצהו הרחוק.
rule-play-unsure = לא ניתן לשלול תנועה בתמיכה: הבדיקה נעשתה ונשארה לא בטוחה.
rule-play-unsure-owner = בדקנו ביד אם יש תנועה במיסב ולא יכולנו לשלול אותה.
rule-bearing-likely = משהו הורגש, נראה או נשאר לא בטוח במיסב, והסימנים כשלעצמם נותנים לפחות 50% לתקלה שם.
rule-bearing-likely-owner = מה שנמצא עד עכשיו מצביע על המיסב.

rule-cause-likely = בסבירות של 50% לפחות: { $cause }.
rule-cause-likely-owner = מה עשוי להסביר זאת: { $about }
rule-cause-likely-misfire = בסבירות של 50% לפחות: { $cause }. דלק שלא נשרף בהחטאה עלול לחמם יתר על המידה ולהרוס את הממיר הקטליטי.
rule-cause-likely-misfire-owner = מה עשוי להסביר זאת: { $about } החטאת הצתה יכולה להרוס חלק יקר במערכת הפליטה.
rule-finding-unexplained = נשמע, הורגש או נראה משהו שאף סיבה אחרת לא מסבירה. בדקו מקרוב לפני שמחזירים את הרכב.
rule-finding-unexplained-owner = יש משהו, שסיפרו לנו או שמצאנו, שדורש מבט מקרוב.
rule-cold-check-buzz = לא הורגשה תנועה, אבל בית המיסב היה קר או שחומו לא נרשם. בדיקה קרה לא שוללת דבר: מושב המיסב יכול להתרופף בחום. בדקו שוב ביד כשחם.
rule-cold-check-buzz-owner = בדקנו ביד כשהחלק קר, אבל הוא יכול להיות רופף כשהוא חם.

rule-no-bearing-action = שתי בדיקות החופש טובות, הגל מסתובב חלק, ולא נמצא דבר נוסף.
rule-no-bearing-action-owner = בדקנו את המיסב ביד ולא מצאנו בו תקלה.
rule-no-bearing-action-not-reproduced = לא שוחזר: לא נשמע דבר, שתי בדיקות החופש טובות והגל מסתובב חלק.
rule-no-bearing-action-not-reproduced-owner = הרעש לא שוחזר: הוא לא הופיע כשהרכב היה אצלנו. בדקנו את המיסב ביד ולא מצאנו בו תקלה.
rule-no-bearing-action-not-listened = לא שוחזר: לא נעשתה בדיקה במנוע עובד. שתי בדיקות החופש טובות והגל מסתובב חלק.
rule-no-bearing-action-not-listened-owner = הרעש לא שוחזר: לא הפעלנו את המנוע כדי להקשיב. בדקנו את המיסב ביד ולא מצאנו בו תקלה.
