### Ce qui est refusé parce que cela dépasse ce qui peut être noté, ou n’est pas ce que cela doit être.
### Les bornes sont dans `src/model/limits.rs`. Refus comme dans errors.ftl.

## Quelque chose de saisi ou de dessiné.
error-intake-too-long = Un texte de la réception est trop long ou contient des caractères qui ne se voient pas
error-intake-too-long-help = Noms, immatriculation, numéro de châssis et contact tiennent en 200 caractères, la plainte et ses circonstances en 10 000. Raccourcissez ce qui est plus long, et retapez ce qui a été collé.
error-layout-fixed = La disposition ne peut plus être changée
error-layout-fixed-help = Le comparateur ou le banc ont mesuré sur son arbre. Ouvrez une nouvelle visite pour cette voiture avec la bonne disposition.
error-layout-takes-back = Le changement retire des réponses
error-layout-takes-back-help = Les réponses ne sont plus celles qui étaient montrées. Enregistrez de nouveau.
error-warm-from-refused = À cette température, un logement n’est pas chaud
error-warm-from-refused-help = Entrez la valeur du constructeur en degrés Celsius, 30 ou plus, ou laissez-la vide.
error-signature-refused = La signature ne peut pas être gardée
error-signature-refused-help = Effacez le cadre et laissez le client signer encore une fois, dans le cadre et de son seul nom.
error-bench-note-empty = La note de l’établi est vide
error-bench-note-empty-help = Écrivez ce qui a été vu ou fait, ou laissez la note de côté.
error-bench-note-too-long = La note de l’établi est trop longue
error-bench-note-too-long-help = Dites-le en 2 000 caractères au plus, ou écrivez deux notes.
error-wall-refused = La paroi qui doit rester ne peut pas être juste
error-wall-refused-help = Donnez-la en millimètres, de 0,1 à 100, ou laissez-la vide si elle n’est pas connue.
error-pass-number-refused = Il n’y a pas de passe de ce numéro
error-pass-number-refused-help = Les passes se comptent à partir de 1 et jusqu’à 200.
error-pass-without-bore = L’alésage n’a pas encore été mesuré
error-pass-without-bore-help = Mesurez d’abord l’alésage tel qu’il a été trouvé, puis notez la passe.
error-pass-diameter-refused = Le diamètre après la passe ne peut pas être juste
error-pass-diameter-refused-help = Donnez-le en millimètres, de 1 à 1 000, ou laissez-le vide s’il n’a pas été mesuré.
error-gauge-not-here = Aucun comparateur n’a sa place à cette étape
error-gauge-not-here-help = Un comparateur se lit aux deux contrôles de jeu du palier.
error-bore-too-many-depths = Il y a plus de profondeurs que ce qui peut être repris
error-bore-too-many-depths-help = Restez à 200. Les mesures d’une profondeur doivent nommer exactement la même.
error-entry-beyond = Une valeur dépasse ce qui peut être noté
error-entry-beyond-help = Cherchez un chiffre de trop ou un texte collé par erreur. Rien n’a été noté.

## Une visite qui ne peut plus rien prendre.
error-visit-full = La visite contient autant d’entrées qu’une visite peut en contenir
error-visit-full-help = Ouvrez une nouvelle visite pour la voiture et continuez là. Tout ce qui a été noté est gardé.
error-visit-photos-full = La visite contient autant de photos qu’une visite peut en contenir
error-visit-photos-full-help = Elle en prend 200. Ouvrez une nouvelle visite pour la voiture, ou donnez une raison pour l’absence de photo. Tout ce qui a été gardé reste.
error-bench-notes-full = L’établi contient autant de notes qu’il peut en contenir
error-bench-notes-full-help = Il en prend 100 par visite. Tout ce qui a été noté est gardé.

## Un fichier.
error-handover-spelling = Une entrée du fichier de passation n’est pas écrite comme Steady écrit
error-handover-spelling-help = Ne vous fiez pas à cette copie. Faites refaire le fichier sur l’appareil d’où il vient. Rien n’a été repris.
error-handover-beyond = Une entrée du fichier de passation contient plus que ce qui peut être noté
error-handover-beyond-help = Aucun appareil n’écrit une telle entrée. Faites refaire le fichier sur l’appareil d’où il vient. Rien n’a été repris.
error-case-photo-unreadable = Une photo que le cas nomme ne peut pas être lue
error-case-photo-unreadable-help = Nommez un fichier par son chemin depuis le fichier du cas et vérifiez que vous pouvez le lire. Rien n’a été noté.
error-case-too-long = Le cas a plus de lignes qu’une visite ne peut en contenir
error-case-too-long-help = Il prend 1 000 réponses et conditions, et autant de lignes de l’établi. Rien n’a été noté.
error-database-foreign = La base de données n’a pas été faite par Steady
error-database-foreign-help = Elle contient quelque chose que Steady n’écrit jamais. Choisissez le fichier steady.db d’un dossier de données ou d’une sauvegarde. Rien n’a été repris.
