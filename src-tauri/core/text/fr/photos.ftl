### Photos : marques, paires, photos en cours de prise, le code pour transmettre un texte. Refus comme dans errors.ftl.

## Refus.
error-photo-heic = La photo est un HEIC, qui ne peut pas être lu ici
error-photo-heic-help = Réglez l’appareil sur JPEG (« le plus compatible ») et reprenez-la, ou choisissez une copie en JPEG.
error-photo-not-of-step = Cette photo n’appartient pas à l’étape
error-photo-not-of-step-help = Rouvrez l’étape et choisissez une de ses photos. Rien n’a été consigné.
error-photo-not-wanted = Plus rien n’attend cette photo
error-photo-not-wanted-help = Ouvrez l’étape et ajoutez-y la photo.
error-marks-too-many = Trop de marques sur une photo
error-marks-too-many-help = Une photo en accepte 12 au plus. Retirez-en quelques-unes, puis gardez le reste.
error-mark-refused = Une marque ne peut pas être gardée
error-mark-refused-help = Dessinez-la sur l’image et un peu plus grande, une ligne libre en moins de traits.
error-mark-label-refused = Les mots sur la photo ne peuvent pas être gardés
error-mark-label-refused-help = Écrivez de 1 à 40 caractères sur une ligne, sans caractères de commande.
error-waiver-too-long = La raison est trop longue
error-waiver-too-long-help = Dites-le en 200 caractères au plus.

## Le registre.
entry-photo-marked = Photo marquée
entry-photos-paired = Photos montrées comme avant et après, ou de nouveau séparément

## Documents.
photo-caption-marked = { $caption }. Marqué : { $labels }
photo-alt-marked = { $alt } La photo est marquée.
photo-alt-labelled = { $alt } Marqué dessus : { $labels }.
photo-caption-before = Avant, { $at } : { $said }
photo-caption-after = Après, { $at } : { $said }
photo-alt-before = Avant, gardée { $at }. { $said }
photo-alt-after = Après, gardée { $at }. { $said }

## Regarder de près et marquer.
ui-photo-closer = Regarder de près, marquer
ui-photo-title = Photo : { $title }
ui-photo-back = Retour à l’étape
ui-photo-none-yet = Il n’y a pas encore de photo de cette étape.
ui-zoom = Agrandissement
ui-zoom-in = Plus grand
ui-zoom-out = Plus petit
ui-zoom-one = 1:1
ui-zoom-fit = Entière
ui-mark-tools = Ce que fait le doigt
ui-mark-look = Déplacer
ui-mark-arrow = Flèche
ui-mark-ring = Anneau
ui-mark-freehand = Dessiner
ui-mark-label = Mots
ui-mark-how-look = Glissez pour déplacer, pincez ou appuyez sur + et - pour agrandir. Au clavier : les flèches déplacent, + et - agrandissent.
ui-mark-how-arrow = Glissez de la queue à la pointe. Au clavier : les flèches déplacent la croix, Entrée pose chaque bout.
ui-mark-how-ring = Glissez sur ce que l’anneau entoure. Au clavier : les flèches déplacent la croix, Entrée pose chaque coin.
ui-mark-how-freehand = Dessinez avec le doigt. Au clavier : Entrée pose et lève le crayon, les flèches dessinent.
ui-mark-how-label = Écrivez les mots, puis touchez leur place. Au clavier : les flèches déplacent la croix, Entrée les pose.
ui-mark-words = Mots sur la photo, 40 caractères au plus
ui-mark-back = Retirer la dernière marque
ui-mark-clear = Retirer toutes les marques
ui-mark-keep = Garder les marques
ui-mark-drop = Laisser comme c’était
ui-mark-undone = Le dernier changement des marques est annulé.
ui-mark-count = { $count ->
    [0] Aucune marque
    [one] { $count } marque
   *[other] { $count } marques
}
ui-mark-unsaved = Pas encore gardé.
ui-mark-kept = Les marques sont gardées. La photo elle-même reste comme elle a été prise.
ui-pair = Avant et après
ui-pair-about = Les photos antérieures de cette étape restent. L’une d’elles peut figurer à côté de la dernière, ici et dans le constat.
ui-pair-before = Avant, { $when }
ui-pair-after = Après, { $when }
ui-pair-with = Montrer celle-ci comme « avant »
ui-pair-alone = Montrer la dernière seule

## Une photo en cours de prise quand l’application s’est arrêtée.
ui-wanted = Une photo pour « { $title } » était en cours de prise, { $when }.
ui-wanted-choose = La choisir
ui-wanted-found = Utiliser la photo de l’appareil, { $when }
ui-wanted-drop = Plus nécessaire

## Le texte court en code.
ui-qr = Montrer en code QR
ui-qr-hide = Masquer le code QR
ui-qr-of = Code QR qui contient le texte court
ui-qr-about = Pointez l’appareil photo de l’autre téléphone dessus. Il contient le texte court ci-dessus ; rien ne passe par un réseau.
