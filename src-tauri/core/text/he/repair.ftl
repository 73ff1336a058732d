### דוח התיקון.

bore-line-size = קוטר ממוצע { $size }, ± { $expanded }.
bore-line-size-unknown = הקוטר הממוצע לא נמדד.
bore-line-ovality = אליפטיות מרבית { $value }, ± { $expanded }.
bore-line-roundness = אי־עגוליות מרבית { $value } (אזור מזערי), ± { $expanded }.
bore-line-roundness-least = אי־עגוליות לפחות { $value }, ± { $expanded }: שיטת המדידה הזאת לא רואה חלק מהצורות.
bore-line-taper-wider = נעשה רחב משפת המושב פנימה ב־{ $value }, ± { $expanded }.
bore-line-taper-narrower = נעשה צר משפת המושב פנימה ב־{ $value }, ± { $expanded }.
bore-line-taper-none = לא נמצאה קוניות: { $value }, ± { $expanded }.

repair-title = דוח תיקון: מושב המיסב של גל ההינע
repair-foot = דוח תיקון, ביקור { $visit }. מה שלא נרשם כאן לא נמדד.
repair-bore-found = הקדח כפי שנמצא
repair-bore-finished = הקדח בסיום
repair-bore-caption = עומק { $depth }, הפחות עגול. הסטייה מצוירת פי { $times }; קו מקווקו: עיגול. { $turn ->
    [clockwise] הזוויות נספרות עם כיוון השעון מ־0°.
   *[counter] הזוויות נספרות נגד כיוון השעון מ־0°.
    }
repair-bore-alt = ציור קוטבי של הקדח בעומק { $depth }, הסטייה מעיגול מצוירת פי { $times }. המשפטים שלידו נותנים את המספרים.
repair-heading-gates = תנאים שאושרו
repair-heading-plan = תוכנית החריטה
repair-heading-passes = מעברים שנחרטו
repair-heading-fit = אפיצות
repair-heading-ring = המיסב סובב ביד אחרי ההרכבה
repair-heading-notes = ברגים ומומנטים
repair-not-recorded = לא נרשם.
repair-gate = { $gate } ({ $by }, { $at })
repair-pass = מעבר { $pass }: הסכין נגעה { $contact } ({ $by }, { $at }).
repair-pass-measured = מעבר { $pass }: הסכין נגעה { $contact }; קוטר { $diameter } ({ $by }, { $at }).
repair-contact-none = בשום מקום
repair-contact-partly = במקומות
repair-contact-all-round = בכל ההיקף
repair-ring-free = מסתובב חופשי ({ $by }, { $at }).
repair-ring-stiff = מסתובב בקושי ({ $by }, { $at }). המושב לוחץ על המיסב: התיקון הזה לא יחזיק.
repair-ring-rough = מסתובב מחוספס ({ $by }, { $at }). המיסב פגום: התיקון הזה לא יחזיק.
repair-note = { $text } ({ $by }, { $at })
repair-photo-bench-found = הקדח כפי שנמצא
repair-photo-bench-finished = הקדח בסיום
repair-photo-bench-ring = המיסב סובב ביד
repair-photo-pass = אחרי מעבר { $pass }
repair-photo-alt = תמונה של העבודה: { $caption }.
repair-caution-rating = הדוח הזה אינו דירוג: אחרי התיקון בודקים חופש בידיים לפני שנוהגים ברכב. הבדיקה ההיא היא ביקור בפני עצמו.
repair-caution-maker = הוראות היצרן, המידות והמומנטים שלו קודמים לדוח הזה, וכך גם החוק המקומי.
repair-caution-measured = המספרים נכונים למקומות ולזוויות שנמדדו, עם אי־הוודאות שלידם.
repair-caution-torque = ברגים חדשים, במומנט של היצרן. מומנט שכתוב כאן הוא מה שהמוסך אומר שהשתמש בו.

entry-gauged = נקרא שעון מדידה
entry-bore-found = הקדח נמדד כפי שנמצא
entry-bore-finished = הקדח נמדד בסיום
entry-housing-looked = בית המיסב נבדק במבט על השולחן
entry-pass-cut = נחרט מעבר
entry-fit-given = חושבה אפיצות
entry-ring-turned = המיסב סובב ביד
entry-bench-noted = הערת שולחן
