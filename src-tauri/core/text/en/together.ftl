### Steps that share a screen: the play both ways, and the looks that can be said to be sound at once.

## Both directions.
pair-play = Feel the play
pair-play-watch = Hands only, no pry bar. Fingers clear of joints, edges and hot parts. Follow the maker's procedure.
pair-play-do = Grip close to the bearing. Watch the gap between shaft and housing. If both move together, answer "Not done", check housing, bolts and mounts, then feel again.
pair-play-do-rubber = Grip the shaft by the bearing. Watch bearing against bracket. Springs back: springy. Hits a stop: knocks.
pair-play-do-rubber-figure = Grip the shaft by the bearing. Watch bearing against bracket. The maker allows { $figure }. Hits a stop: knocks.
pair-play-vertical = Up and down: push up, let down
pair-play-lateral = Side to side: push left, pull right
pair-short-play-vertical = Up and down
pair-short-play-lateral = Side to side
pair-within-figure = Up to { $figure }
pair-beyond-figure = More than { $figure }
pair-of = { $what }: { $direction }

## The looks.
ui-looks = Look at every part
ui-looks-watch = Eye protection and gloves on. Hot exhaust close by. Do not hang or lever on anything, no fingers in joints. Leave orange cables alone. The maker's procedure comes first.
ui-looks-do = Light each part. If a part is not sound or cannot be seen, open its row.
ui-looks-sound = { $count ->
    [one] This one sound
   *[other] All { $count } sound
}
ui-looks-none = Nothing is left to look at here.
ui-photo-which = Photo of which part?
looked-housing-look = Housing
looked-housing-look-for = Cracks, bolts, marks, grease, dust
looked-support-look = Rubber ring
looked-support-look-for = All round, bracket, bolts
looked-coupling-look = Couplings and joints
looked-coupling-look-for = Cracks, rubber, boots, bolts, wear
looked-shaft-look = Shaft
looked-shaft-look-for = Dents, bends, fibre, lost weights
looked-shield-and-mounts = Shields and mounts
looked-shield-and-mounts-for = Press each shield. Mounts, rubbing

error-looks-changed = Other parts are open now than were listed
error-looks-changed-help = Nothing was recorded. Read the list again, then say that they are sound.
