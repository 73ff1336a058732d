### Ce qui a été mis de côté parce que ce n’était pas utilisable, et ce qui peut en être lu.

## Pourquoi un dossier a été mis de côté.
set-aside-damaged = La base de données était abîmée et a été mise de côté avec ses photos. Rien n’a été effacé.
set-aside-no-database = Le fichier de la base de données n’en était pas une. Il a été mis de côté avec les photos. Rien n’a été effacé.
set-aside-empty = Le fichier de la base de données était vide. Il a été mis de côté avec les photos. Rien n’a été effacé.
set-aside-missing = La base de données manquait. Les photos ont été mises de côté. Rien n’a été effacé.

## Refus.
error-salvage-missing = Cette base de données n’existe pas
error-salvage-missing-help = Vérifiez le nom et que le disque est branché. Si le dossier a été mis de côté sans base de données, seules ses photos y sont.
error-salvage-empty = Le fichier de la base de données est vide
error-salvage-empty-help = Rien n’y a jamais été écrit, ou tout est parti. Cherchez une autre copie : une sauvegarde ou un autre appareil.
error-salvage-no-database = Le fichier n’est pas une base de données de Steady
error-salvage-no-database-help = Rien n’y ressemble à une partie d’une telle base. Nommez le steady.db d’un dossier de données, d’une sauvegarde ou d’un dossier mis de côté. Il a été laissé tel quel.
error-unknown-set-aside = Ce dossier mis de côté n’existe pas
error-unknown-set-aside-help = Il a été déplacé ou enlevé depuis le démarrage de Steady. Revenez au premier écran et regardez encore.
error-erase-set-aside = Rien n’a été effacé, car la visite n’a pas pu être cherchée dans un dossier mis de côté
error-erase-set-aside-help = Réparez ce qui est nommé, ou déplacez ce dossier hors du dossier de données, puis effacez de nouveau. Ce qui se trouve dans un dossier déplacé n’est pas effacé.
error-erase-unswept = La visite est effacée, mais des parties peuvent encore se trouver dans des fichiers qui n’ont pas pu être nettoyés
error-erase-unswept-help = Fermez ce qui lit aussi les données, par exemple une sauvegarde ou un export. Steady continue alors de lui-même, sur le premier écran ou au prochain démarrage. La visite ne revient pas.
error-nothing-to-export-set-aside = Il n’y a aucune visite à transmettre : les données ont été mises de côté
error-nothing-to-export-set-aside-help = Reprenez d’abord ce qui peut être lu : sur le premier écran ou avec steady salvage.

## Sur les écrans.
ui-set-aside = Des données ont été mises de côté
ui-set-aside-readable = { $visits ->
    [0] Aucune visite ne peut y être lue en entier.
    [one] 1 visite peut y être lue, avec { $photos } de ses photos.
   *[other] { $visits } visites peuvent y être lues, avec { $photos } de leurs photos.
}
ui-set-aside-lost = { $lost ->
    [one] D’une visite, une partie a été trouvée, mais pas tout.
   *[other] De { $lost } visites, une partie a été trouvée, mais pas tout.
}
ui-set-aside-uncounted = Ce qui peut y être lu n’a pas pu être compté. Un nouvel essai aura lieu au prochain démarrage de Steady.
ui-set-aside-folder = Dossier mis de côté
ui-take-back = Reprendre ce qui peut être lu
ui-taking-back = Lecture …
ui-taken-back = { $taken ->
    [0] Tout ce qui peut être lu était déjà ici.
    [one] 1 visite reprise.
   *[other] { $taken } visites reprises.
}
ui-taken-back-lost = { $lost ->
    [one] 1 visite n’est plus entière et reste dans le dossier.
   *[other] { $lost } visites ne sont plus entières et restent dans le dossier.
}
ui-taken-back-photos = { $photos ->
    [one] 1 photo n’a pas été trouvée entière.
   *[other] { $photos } photos n’ont pas été trouvées entières.
}
ui-dismiss-set-aside = Je l’ai lu
ui-dismiss-set-aside-about = L’avis disparaît. Le dossier reste, et les réglages le montrent.
