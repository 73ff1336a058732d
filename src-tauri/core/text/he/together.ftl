### צעדים שחולקים מסך אחד: החופש בשני הכיוונים, ומה שאפשר לומר עליו בבת אחת שהוא תקין.

## שני הכיוונים.
pair-play = לחוש את החופש
pair-play-watch = ידיים בלבד, בלי מוט. אצבעות רחוק ממפרקים, מקצוות ומחלקים חמים. פעלו לפי הוראות היצרן.
pair-play-do = אחזו בגל קרוב למיסב. הביטו במרווח בין הגל לבית. אם שניהם זזים יחד, ענו ״לא בוצע״, הביטו בבית, בברגים ובתומכים, ובדקו שוב ביד.
pair-play-do-rubber = אחזו בגל קרוב למיסב. הביטו במיסב מול התושבת שלו. נע וחוזר: קפיצי. מגיע לעצר: נוקש.
pair-play-do-rubber-figure = אחזו בגל קרוב למיסב. הביטו במיסב מול התושבת שלו. היצרן מתיר { $figure }. מגיע לעצר: נוקש.
pair-play-vertical = למעלה ולמטה: דחפו, הניחו לרדת
pair-play-lateral = לצדדים: דחפו שמאלה, משכו ימינה
pair-short-play-vertical = למעלה ולמטה
pair-short-play-lateral = לצדדים
pair-within-figure = עד { $figure }
pair-beyond-figure = יותר מ־{ $figure }
pair-of = { $what }: { $direction }

## במה להביט.
ui-looks = להביט בכל חלק
ui-looks-watch = הרכיבו משקפי מגן וכפפות. אגזוז חם קרוב. אל תיתלו ואל תלחצו במוט, אצבעות מחוץ למפרקים. אל תיגעו בכבלים כתומים. הוראות היצרן קודמות.
ui-looks-do = האירו כל חלק. לא תקין, או לא נראה: פתחו את השורה שלו.
ui-looks-sound = { $count ->
    [one] חלק זה תקין
   *[other] כל { $count } תקינים
}
ui-looks-none = לא נותר כאן במה להביט.
ui-photo-which = תמונה של איזה חלק?
looked-housing-look = בית המיסב
looked-housing-look-for = סדקים, ברגים רופפים, סימנים, גריז, אבק
looked-support-look = תמיכת הגומי
looked-support-look-for = הגומי מסביב, התושבת, הברגים
looked-coupling-look = מחברים ומפרקים
looked-coupling-look-for = סדקים, גומי, מגנים, ברגים, שחיקה
looked-shaft-look = הגל
looked-shaft-look-for = מכות, כיפופים, סיבים, משקולות
looked-shield-and-mounts = מגינים ותומכים
looked-shield-and-mounts-for = לחצו על כל מגן. תומכים, סימני שפשוף

error-looks-changed = החלקים שפתוחים עכשיו אינם אלה שברשימה
error-looks-changed-help = דבר לא נרשם. קראו שוב את הרשימה, ואז אמרו שהם תקינים.
