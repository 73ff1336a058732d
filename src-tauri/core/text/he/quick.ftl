### הבדיקה ביד כדרך בפני עצמה, ומה מחזיק את הרכב.

ui-lift-kind = מה מחזיק את הרכב?
ui-lift-kind-why = אחר כך באים התנאים שלו, לכל היותר שבעה.
lift-two-post = ליפט שני עמודים
lift-platform = ליפט משטחים
lift-pit = בור
lift-ramps = רמפות
lift-stands = מעמדי ביטחון

order-hands-on = רק הבדיקה בידיים
ui-order-hands-on-about = מתחת לרכב: מסתכלים על התמיכה, מרגישים את החופש בשני הכיוונים, ויש דירוג. השאר יכול לבוא אחר כך.
ui-find-out-why = לברר מה עושה את הרעש
ui-find-out-why-about = הבדיקה בידיים נעשתה. שאר השלבים מחפשים את הסיבה.
ui-leave-part = לצאת מהחלק הזה
ui-lift-changed = הרכב הורד או הוזז, או מישהו נכנס אליו? צאו קודם מהחלק הזה.
ui-gate-again = כבר אושר על ידי { $by }, { $when }.
ui-gate-again-part = זה כבר לא נכון? צאו מהחלק הזה: התנאים שלו יאושרו אז מחדש.

## ביטול הרישום האחרון: מה הוא, לפני שהוא הולך.
ui-undo-by = מאת { $by }, { $when }
ui-undo-others = הרישום הזה של { $by }, לא שלכם. לבטל אותו?
ui-undo-do = לבטל אותו
ui-undo-keep = להשאיר אותו
ui-undone = בוטל: { $what }
ui-undone-what = { $about ->
    [none] { $what }
   *[other] { $what }, { $about }
}
ui-redo = לרשום שוב
ui-redo-gate = תנאי מאושר מחדש ליד הרכב, בשורה שלו.
ui-redo-photo = תמונה מצלמים מחדש במצלמה.
ui-redo-gauge = קריאות מקלידים מחדש במסך של השעון.

## ליד הלחצן שנלחץ.
ui-recorded = נרשם.
