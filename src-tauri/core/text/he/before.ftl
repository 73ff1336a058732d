### רכב שכבר היה כאן: מה מביא אותו, באילו תנאים נשמע הרעש, ומה נמצא בביקורים קודמים.

occasion = מה מביא את הרכב
occasion-complaint = התלונה, בפעם הראשונה
occasion-after-repair = בדיקה אחרי התיקון
occasion-comeback = הרעש חזר אחרי תיקון
occasion-said-after-repair = הביקור הזה הוא בדיקה אחרי התיקון.
occasion-said-comeback = הרעש חזר אחרי תיקון.
conditions = נשמע בתנאים
conditions-about = אותה מהירות, אותו הילוך ואותו חום בפעם הבאה: כך אפשר להשוות לפני ואחרי.
conditions-speed = מהירות
conditions-gear = הילוך
conditions-engine-warm = מנוע חם
conditions-engine-cold = מנוע קר
speed-km = { $value } קמ״ש
speed-miles = { $value } מייל לשעה
conditions-gear-said = הילוך { $gear }
conditions-again = כמו ב־{ $day }: { $said }
field-conditions = נשמע בתנאים
field-occasion = סוג הביקור
before-title = ביקורים קודמים של הרכב
before-known = { $count ->
    [one] הרכב הזה כבר היה כאן פעם אחת
    [two] הרכב הזה כבר היה כאן פעמיים
   *[other] הרכב הזה כבר היה כאן { $count } פעמים
}
before-take-car = העתקת מה שנרשם על הרכב
before-taken = הועתק. בדקו שזה עדיין נכון.
before-step = ב־{ $day }: { $said }
before-none = אין במכשיר הזה ביקור קודם של הרכב. רכב מזוהה לפי מספר השלדה או לוחית הרישוי.
before-broken = הרישום של הביקור הזה פגום. מה שכתוב בו אינו ראיה.
before-not-checked = דבר לא נבדק בידיים.
before-now = הביקור הזה
before-curve = התנועה שנמדדה בשעון, ביקור אחר ביקור, עם אי־הוודאות
before-curve-about = { $place }: כל נקודה היא ביקור, הקו הוא אי־הוודאות. תיקון בין שתי נקודות מתחיל מחדש: נמדד מיסב אחר או מושב אחר.
before-movement = { $place }: { $movement }
before-repaired = תוקן כאן
before-open = פתיחת הביקור ההוא
intake-warm-from = בית מיסב חם לפי היצרן: החל ממעלות צלזיוס
before-outcome = התברר: { $causes }
