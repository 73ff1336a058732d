### על מה דירוג לא מדבר, גל שסובב יחד עם מה שתלוי בו, ומה שהומה עם מהירות הנסיעה.

headline-notice-in-part = אין צורך בטיפול במיסב, עד כמה שנבדק
finding-sum-notice-in-part = הודעה: אין צורך בטיפול במיסב, עד כמה שנבדק.
finding-next-unlooked = לפני שמחזירים את הרכב, בדקו את מה שנשאר: { $parts }.

## מה שאיש לא הביט בו במערכת ההינע.
limit-unlooked = לא נבדק, או לא כולו: { $parts }. הדירוג הזה לא אומר עליהם דבר.
limit-unlooked-owner = לא בדקנו, או לא עד הסוף: { $parts }. איננו יכולים לומר עליהם דבר.
unlooked-play-far-end = חופש בקצה הרחוק של הגל
unlooked-play-far-end-owner = הקצה הרחוק של הגל
unlooked-coupling-look = המחברים והברגים שלהם
unlooked-coupling-look-owner = המפרקים והברגים שלהם
unlooked-shaft-look = הגל עצמו
unlooked-shaft-look-owner = הגל עצמו
unlooked-shield-and-mounts = מגינים ותומכים
unlooked-shield-and-mounts-owner = מגיני החום והחלקים שמחזיקים את המנוע
ui-unlooked = לא נבדק במבט
limit-turn-by-hand-none = חופש בלבד; המפרקים לא סובבו לבדם.
limit-turn-by-hand-none-owner = לא סובבנו את הגל לבדו.

## סובב יחד עם הגלגלים.
ui-free-engine = האם הגל מנותק מהמנוע?
ui-free-wheels = האם הגל מנותק מהגלגלים ומהדיפרנציאל?
ui-free-no-engine = מסובב את המנוע
ui-free-no-wheels = מסובב את הגלגלים
detail-free-engine = סובב כשהוא מנותק מהמנוע
detail-free-wheels = סובב כשהוא מנותק מהגלגלים ומהדיפרנציאל
detail-not-free-engine = סובב יחד עם המנוע
detail-not-free-wheels = סובב יחד עם הגלגלים
rule-stiff-with-wheels = הגל מתנגד, אבל גלגלים, בלמים ודיפרנציאל הסתובבו איתו: לא ידוע מי מהם מסתובב בכבדות. סובבו אותו מנותק.
rule-stiff-with-wheels-owner = היה קשה לסובב את הגל, אבל הגלגלים הסתובבו איתו. עוד לא סובבנו אותו לבדו.
note-could-stiff-with-wheels = מה שמסתובב בכבדות עלול להתחמם ולקרוס. ייתכן שזה מיסב, מפרק או בלם.

## שני הקצוות של גל שדבר לא מחזיק ביניהם.
step-play-far-end-ends = חופש בשני הקצוות
rule-far-end-play-ends = הורגשה תנועה לרוחב הגל, או נקישה, באחד הקצוות או בשניהם. רשמו באיזה לפני שמתחילים לעבוד.
rule-far-end-play-ends-owner = הגל רופף באחד הקצוות שלו, או בשניהם.
rule-far-end-unsure-ends = שני קצות הגל נבדקו ביד, ולא ניתן לשלול תנועה. בדקו שוב את שניהם כשאדם שני מביט במפרק.
rule-far-end-unsure-ends-owner = בדקנו ביד תנועה בשני קצות הגל ואיננו בטוחים.

## חשד בצינור שעדיין סגור.
rule-bearing-likely-suspected-closed = תקלה במיסב סבירה לפחות 50% לפי מה שנשמע: חשד. הצינור סגור, ולכן אף יד לא יכלה לבדוק. פתיחת הצינור לפי הוראות היצרן תגלה.
rule-bearing-likely-suspected-closed-owner = מה ששמענו יכול לבוא ממיסב בצינור. הצינור סגור, ולכן איש עוד לא יכול היה לבדוק ביד.

## מה שהומה עם מהירות הנסיעה.
cause-wheel-bearing-or-axle = מיסב גלגל, או גלגלי שיניים של הסרן או של תיבת ההעברה
cause-wheel-bearing-or-axle-about = מיסב גלגל, או גלגלי השיניים של הסרן או של תיבת ההעברה, שחוקים והומים בנסיעה.
cause-wheel-bearing-or-axle-next = סעו בעיקול מתון לכל צד: המיה שמתחזקת בצד אחד היא מיסב הגלגל החיצוני. יללה שבאה והולכת עם הדוושה היא הדיפרנציאל, או תיבת ההעברה היכן שיש כזו: בדקו שם את השמן ואת החופש. אחר כך סובבו כל גלגל ביד על הליפט.
step-road-bend = בכביש: בעיקול
step-road-bend-do = אותה מהירות, עיקול ארוך ומתון שמאלה, ואז אחד ימינה. האם המיה מתחזקת בצד אחד?
step-road-bend-watch = כביש רחב בלי תנועה, לעולם לא לזגזג. נקישה כבדה או רעידה חזקה: עצרו. הוראות היצרן קודמות.
drawing-road-bend = רכב על הכביש, עם גלים מתחת לרצפתו.
answer-louder = חזק יותר בצד אחד
answer-road-bend-none = אין המיה
answer-road-bend-same = אותו דבר לשני הצדדים
