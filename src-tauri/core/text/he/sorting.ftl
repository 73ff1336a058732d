### המיון: למה בדיקה היא הבאה או שאין עוד, הפתעות, החלטות ומה עולה החלטה שגויה.

next-informs = הבדיקה הזאת תגלה הכי הרבה.
next-rating = הבדיקה הזאת עוד יכולה להחמיר את הדירוג.
stop-nothing-changes = אף בדיקה שעוד פתוחה לא תשנה מה עושים.
stop-not-worth = מה שעוד פתוח יגלה מעט מדי ביחס לסיכון שבו.
stop-all-done = כל בדיקה שאפשר לעשות נעשתה.

surprise-signs-disagree = הסימנים סותרים זה את זה: אף סיבה ברשימה לא מסבירה את כולם יחד. בדקו שוב את התשובות שכאן.
surprise-not-listed = ייתכן שמאחורי זה משהו שאינו ברשימה: הסיבות שברשימה מסבירות רק מעט ממה שנמצא.

judgement-warning-or-caution = לעכב את הרכב, או לתת לו לנסוע עד התיקון?
judgement-bearing-now-or-watch = לתקן את המיסב עכשיו, או לעקוב?
judgement-repair-now-or-watch = לתקן את הסיבה הזאת עכשיו, או לעקוב?

course-hold-back = אסור לנהוג עד שיתוקן
course-drive-until-repair = נוסע עד התיקון
course-repair-now = לתקן עכשיו
course-watch = לעקוב

loss-held-back-in-vain = הרכב הושבת ללא צורך
loss-driven-on-a-bad-bearing = נסעו בו עם מיסב פגום
loss-bearing-repair-in-vain = המיסב תוקן לשווא
loss-bearing-fault-left = התקלה במיסב נמשכה, ופגעה בבית המיסב ובגל
loss-repair-in-vain = התיקון היה לשווא
loss-fault-left = התקלה נמשכה

entry-opinion-given = נרשמה דעה
entry-outcome-confirmed = התוצאה אושרה

layout-file-refused = אי אפשר להשתמש בקובץ מבנה של המוסך הזה. תקנו אותו, או הוציאו אותו מתיקיית layouts; שאר המבנים עובדים.
knowledge-row-refused = אי אפשר להשתמש בשורה מהידע של המוסך הזה. תקנו אותה, או הוציאו אותה מתיקיית knowledge; שאר השורות עובדות.

finding-opinion = לדעת { $by }: { $cause }. { $reason }
finding-outcome = נמצא בפועל: { $causes }, לפי { $by } ({ $at }).
