### Étapes qui partagent un écran : le jeu dans les deux sens, et ce qui peut être dit bon d’un coup.

## Les deux sens.
pair-play = Sentir le jeu
pair-play-watch = Les mains seules, pas de levier. Doigts loin des cardans, des arêtes et des pièces chaudes. Suivez la procédure du constructeur.
pair-play-do = Saisissez près du roulement. Regardez l’espace entre arbre et palier. S’ils bougent ensemble : « Pas fait », regardez palier, vis et supports, puis recommencez.
pair-play-do-rubber = Saisissez l’arbre au roulement. Regardez roulement et support. Il revient : « Élastique ». Il bute : « Cogne ».
pair-play-do-rubber-figure = Saisissez l’arbre au roulement. Regardez roulement et support. Le constructeur permet { $figure }. Il bute : « Cogne ».
pair-play-vertical = Haut et bas : levez, laissez descendre
pair-play-lateral = Gauche et droite : poussez, tirez
pair-short-play-vertical = Haut et bas
pair-short-play-lateral = Gauche et droite
pair-within-figure = Jusqu’à { $figure }
pair-beyond-figure = Plus de { $figure }
pair-of = { $what } : { $direction }

## Ce qu’il faut regarder.
ui-looks = Regarder chaque pièce
ui-looks-watch = Lunettes et gants mis. Échappement chaud. Ne vous pendez à rien, pas de levier, pas de doigts dans les cardans. Ne touchez pas aux câbles orange. D’abord la procédure du constructeur.
ui-looks-do = Éclairez chaque pièce. Si elle n’est pas bonne ou pas visible, ouvrez sa ligne.
ui-looks-sound = { $count ->
    [one] Celle-ci en bon état
   *[other] Les { $count } en bon état
}
ui-looks-none = Il n’y a plus rien à regarder ici.
ui-photo-which = Photo de quelle pièce ?
looked-housing-look = Palier
looked-housing-look-for = Fissures, vis, traces, graisse
looked-support-look = Caoutchouc
looked-support-look-for = Tout autour, patte, vis
looked-coupling-look = Cardans et flectors
looked-coupling-look-for = Fissures, soufflets, vis, usure
looked-shaft-look = Arbre
looked-shaft-look-for = Chocs, plis, fibre, masses
looked-shield-and-mounts = Écrans et supports
looked-shield-and-mounts-for = Pressez les écrans. Supports, traces

error-looks-changed = Ce ne sont plus les pièces de la liste qui restent à regarder
error-looks-changed-help = Rien n’a été noté. Relisez la liste, puis dites qu’elles sont en bon état.
