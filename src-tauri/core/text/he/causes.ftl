### סיבות: השם (cause-ID) ומשפט אחד פשוט שבעל הרכב יכול לקרוא (-about).

cause-loose-seat = מיסב רופף בבית המיסב
cause-loose-seat-about = המיסב כבר לא יושב הדוק במקומו, ולכן הגל יכול לזוז.
cause-worn-bearing = מיסב שחוק
cause-worn-bearing-about = המיסב עצמו שחוק וכבר לא מסתובב חלק.
cause-squeezed-bearing = מיסב לחוץ
cause-squeezed-bearing-about = בית המיסב לא עגול ולוחץ על המיסב, ולכן הוא מסתובב בכבדות.
cause-housing-damage = בית מיסב פגום
cause-housing-damage-about = החלק שמחזיק את המיסב סדוק או רופף.
cause-torn-support-rubber = גומי התמיכה קרוע
cause-torn-support-rubber-about = טבעת הגומי שמחזיקה את המיסב קרועה או שחוקה.
cause-low-idle = סל״ד סרק נמוך מדי
cause-low-idle-about = המנוע עובד לאט מדי בסרק, וזה גורם לחלקים בין המנוע לגלגלים לקרקש.
cause-early-engagement = המצמד תופס מוקדם מדי
cause-early-engagement-about = המצמד תופס בסל״ד הלא נכון, וזה גורם לחלקים בין המנוע לגלגלים לקרקש.
cause-misfire = החטאת הצתה במנוע
cause-misfire-about = המנוע מחטיא הצתה בצילינדר אחד או יותר.
cause-coupling-or-joint = מחבר או מפרק שחוק
cause-coupling-or-joint-about = מפרק שמחבר את הגל לחלק שלידו שחוק או קשה לתנועה.
cause-shaft-damage = גל פגום
cause-shaft-damage-about = הגל עצמו מעוך, כפוף או לא מאוזן.
cause-loose-shield-or-mount = מגן או תומך רופף
cause-loose-shield-or-mount-about = מגן חום או תומך ליד הגל רופף או נוגע.
cause-air-leak = דליפת אוויר במנוע
cause-air-leak-about = המנוע יונק אוויר במקום שאסור, וזה משמיע רחש.
cause-normal-character = אף אחת מהסיבות האלה
cause-normal-character-about = אף אחת מהתקלות שברשימה לא נמצאה, וייתכן שכך הרכב הזה נשמע.
