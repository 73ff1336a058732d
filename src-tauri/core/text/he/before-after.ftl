# The sheet for the customer: the bore before and after

ui-paper-before-after = ללקוח
owner-bore-title = החור שמחזיק את המיסב שלכם, לפני ואחרי
owner-bore-about = המיסב יושב בחור עגול. כשהחור כבר לא עגול, המיסב משתחרר בו. הציורים מראים את החור כפי שנמדד.
owner-bore-before = לפני העבודה
owner-bore-after = אחרי העבודה
owner-bore-not-measured = לא נמדד. לא ידוע דבר על צורתו.
owner-bore-out = סטייה מעיגול: { $value }. הגבול: { $limit }.
owner-bore-out-least = סטייה מעיגול: לפחות { $value }, כי לא ראו את הכול. הגבול: { $limit }.
owner-bore-out-no-limit = סטייה מעיגול: { $value }. עוד לא ידוע גבול.
owner-bore-out-least-no-limit = סטייה מעיגול: לפחות { $value }, כי לא ראו את הכול. עוד לא ידוע גבול.
owner-bore-within = זה בתוך הגבול.
owner-bore-beyond = זה מעבר לגבול.
owner-bore-unsure = זה קרוב מדי לגבול, או שראו מעט מדי, כדי לומר באיזה צד.
owner-bore-scale = שניהם מצוירים באותו קנה מידה: מה שלא עגול מוגדל פי { $times }. קו מקווקו: חור עגול.
owner-bore-alt = { $side }: החור מצויר לפי המדידות שלו. המשפט שמתחת נותן את המספר.
owner-bore-heading-done = מה נעשה
owner-bore-done-replace = אי אפשר להציל את החלק שמחזיק את המיסב, וצריך להחליף אותו באחר.
owner-bore-done-sleeve-out = הוצא תותב ישן.
owner-bore-done-cut = החור השחוק נחרט מחדש לעיגול, { $passes ->
    [one] במעבר אחד
   *[other] ב־{ $passes } מעברים
    }.
owner-bore-done-cut-partly = החור השחוק נחרט, { $passes ->
    [one] במעבר אחד
   *[other] ב־{ $passes } מעברים
    }, ועוד לא נקי בכל ההיקף.
owner-bore-done-sleeve = הורכב תותב חדש שמחזיק את המיסב.
owner-bore-done-turns = אחרי ההרכבה ובקור, המיסב סובב ביד ומסתובב חופשי.
owner-bore-done-does-not-turn = המיסב לא מסתובב חופשי. העבודה הזאת לא גמורה.
owner-bore-done-not-turned = לא רשום שהמיסב מסתובב חופשי. העבודה הזאת לא גמורה.
owner-bore-caution-check = הדף הזה לא אומר שבטוח לנסוע ברכב. אחרי העבודה המוסך בודק תנועה בידיים ואומר לכם מה מצא.
owner-bore-caution-limit = הגבול הוא הכלל של המוסך הזה לחור בגודל הזה. המספר של היצרן קודם.
owner-bore-caution-record = בדוח התיקון יש כל המספרים. בקשו אותו.
owner-bore-foot = ללקוח, ביקור { $visit }. מה שלא כתוב כאן לא נמדד.
