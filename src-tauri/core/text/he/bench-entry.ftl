# הזנת קדח: מקשים, שרטוט, מה שהודבק

ui-pad-at = עומק { $depth } מ״מ, { $angle }°
ui-pad-sign = החלפת הסימן
ui-pad-begins = להתחיל ב־{ $begins }
ui-pad-next = הבא
ui-pad-repeat = כמו קודם
ui-pad-done = כל הקריאות הוזנו.
ui-sketch = שרטוט של { $count } קריאות כפי שהן מוזנות
ui-sketch-about = שרטוט של מה שהוזן, ההפרשים מוגדלים. התוצאה באה כשהקדח נרשם.
ui-paste = הדבקה, או רשימה של מכשיר מדידה
ui-paste-field = מגיליון או מקובץ של מכשיר מדידה
ui-paste-none = זה לא נכנס ל־{ $depths } עומקים של { $angles } זוויות. קבעו קודם עומקים וזוויות, או הדביקו עמודה או שורה שיש לה מקום מהמקום הנוכחי.
ui-paste-ways = אפשר לקרוא את זה ביותר מדרך אחת. בחרו את הנכונה; לפני כן דבר לא מוזן.
ui-paste-column = עמודה { $number }, { $count } קריאות: { $first } …
ui-paste-row = { $count } קריאות: { $first } …
ui-paste-lines-are-depths = כל שורה עומק אחד: { $first } …
ui-paste-columns-are-depths = כל עמודה עומק אחד: { $first } …
