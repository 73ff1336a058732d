# סטיית הסיבוב של הגל, נקראת על השולחן אחרי ההרכבה

entry-run-out-read = נקראה סטיית הסיבוב של הגל
repair-run-out = סטיית הסיבוב של הגל ליד המיסב, סיבוב אחד: { $size } ({ $by }, { $at }). לא ידוע גבול שנכון לכל גל.
ui-bench-run-out = סטיית הסיבוב של הגל ליד המיסב, מ״מ
ui-bench-run-out-about = עם שעון על הגל ליד המיסב, סובבו אותו ביד סיבוב שלם ורשמו את כל תנודת המחוג. לא ידוע גבול שנכון לכל גל: המספר נשמר לשם השוואה.
error-run-out-refused = סטיית הסיבוב אינה כזאת ששעון מראה
error-run-out-refused-help = הזינו את כל תנודת המחוג במילימטרים, מ־0 עד 10.

ui-ring-which = איזה מיסב?
ui-ring-place-one = היחיד
ui-ring-place-front = קדמי
ui-ring-place-rear = אחורי
ui-ring-temperature = כמה הוא חם?
ui-ring-cold = קר
ui-ring-warm = עדיין חם
ui-ring-clearance = מרווח פנימי רדיאלי שנותר, מ״מ (אפשר להשאיר ריק)
repair-ring-front = מיסב קדמי: { $line }
repair-ring-rear = מיסב אחורי: { $line }
repair-ring-front-open = המיסב הקדמי עוד לא סובב.
repair-ring-rear-open = המיסב האחורי עוד לא סובב.
repair-ring-warm = הוא היה עדיין חם: בית חם רחב יותר ומשחרר. סובבו שוב כשקר.
repair-ring-clearance = מרווח פנימי רדיאלי שנותר: { $clearance }.
repair-ring-clearance-gone = לא נשאר מרווח פנימי ({ $clearance }): הוא מתחמם ומתקלקל מוקדם.
error-clearance-refused = לשום מיסב של גל אין מרווח פנימי כזה
error-clearance-refused-help = הזינו אותו במילימטרים, מ־0 עד 1, למשל 0.012, או השאירו ריק.
