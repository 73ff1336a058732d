### Transmettre des visites : fichiers pour un autre appareil, effacement, sauvegardes. Refus comme dans errors.ftl.

## Refus d'un fichier de passation.
error-handover-unknown = Ce n’est pas un fichier de passation de Steady
error-handover-unknown-help = Choisissez le fichier .steady tel qu’il a été fait. Un fichier décompressé puis recompressé ne compte pas. Rien n’a été repris.
error-handover-cut-short = Le fichier de passation est tronqué
error-handover-cut-short-help = Copiez-le de nouveau de là où il a été fait, ou faites-le refaire. Rien n’a été repris.
error-handover-newer = Le fichier de passation vient d’un Steady plus récent
error-handover-newer-help = Installez ici la version plus récente, puis reprenez le fichier. Les données d’ici n’ont pas été touchées.
error-handover-changed = Le fichier de passation a été modifié après avoir été fait
error-handover-changed-help = Ne vous fiez pas à cette copie. Faites refaire le fichier sur l’appareil d’où il vient. Rien n’a été repris.
error-handover-signature = La signature du fichier de passation n’est pas juste
error-handover-signature-help = Ne vous fiez pas à cette copie. Faites refaire le fichier sur l’appareil d’où il vient. Rien n’a été repris.
error-handover-part-missing = Un morceau du fichier de passation manque
error-handover-part-missing-help = Faites refaire le fichier sur l’appareil d’où il vient. Rien n’a été repris.
error-handover-part-extra = Le fichier de passation contient quelque chose qui n’a rien à y faire
error-handover-part-extra-help = Ne vous fiez pas à cette copie. Faites refaire le fichier sur l’appareil d’où il vient. Rien n’a été repris.
error-handover-part-name = Le fichier de passation nomme un morceau qu’aucune visite n’a
error-handover-part-name-help = Ne vous fiez pas à ce fichier. Le nombre dit quel morceau de sa liste c’est. Rien n’a été repris.
error-handover-too-large = Le fichier de passation est trop grand
error-handover-too-large-help = Un fichier contient jusqu’à 4 Go, et aucun texte plus long que son champ. Transmettez moins de visites à la fois ; rien n’a été repris.
error-handover-chain = Un registre du fichier de passation n’est pas entier
error-handover-chain-help = Ne vous fiez pas à cette copie. Faites refaire le fichier sur l’appareil d’où il vient. Rien n’a été repris.
error-handover-forked = Le registre d’un appareil ne continue pas de la même façon ici et dans le fichier
error-handover-forked-help = Un dossier de données a été copié et utilisé deux fois sous un même nom. Gardez les deux copies ; aucune n’a été changée. N’utilisez désormais que l’un des deux dossiers ; ce que l’autre contient de cette visite se lit là.
error-handover-photo = Une photo du fichier de passation n’est pas comme Steady garde les photos
error-handover-photo-help = Ne vous fiez pas à ce fichier. Rien n’a été repris.
error-file-changed = Le fichier a changé pendant qu’on vous interrogeait
error-file-changed-help = Rien n’a été repris. Importez-le encore une fois et relisez ce qu’il changerait.
error-handover-unreadable = Le fichier ne peut pas être lu
error-handover-unreadable-help = Vérifiez qu’il est là et que vous avez le droit de le lire. Rien n’a été repris.
error-handover-unwritable = Le fichier de passation ne peut pas être écrit
error-handover-unwritable-help = Nommez un autre endroit où vous pouvez écrire, ou libérez de la place.

## Refus autour.
error-visit-erased = La visite a été effacée sur cet appareil
error-visit-erased-help = Son client l’a demandé, et elle reste effacée ici. Rien n’a été repris ni sorti.
error-erase-word-differs = Le mot de confirmation n’est pas le bon
error-erase-word-differs-help = Répétez la plaque de la visite, ou le dernier bloc de son identifiant. Rien n’a été effacé.
error-chain-broken = Le registre de la visite est abîmé
error-chain-broken-help = Il ne peut pas être transmis comme entier. Laissez les données de cet appareil telles quelles, et utilisez une sauvegarde d’avant.
error-nothing-to-export = Il n’y a pas de visite à transmettre
error-nothing-to-export-help = Notez d’abord une visite, ou nommez un autre dossier de données.
error-knowledge-not-kept = Cette visite a été triée avec un savoir qui n’est pas conservé ici
error-knowledge-not-kept-help = Regardez-la dans le dossier de données qui l’a triée, ou indiquez une autre version.
error-nothing-to-salvage = Rien ne peut être lu dans cette base de données
error-nothing-to-salvage-help = Nommez le steady.db d’un dossier mis de côté. Elle a été laissée telle quelle.

## Sur les écrans.
ui-handover = Transmettre
ui-handover-about = Un fichier avec le registre et les photos de cette visite, pour un autre appareil avec Steady. Il est signé, et une copie modifiée y est refusée.
ui-handover-make = Faire le fichier
ui-handover-making = En cours …
ui-handover-save = Enregistrer le fichier
ui-handover-where = Les fichiers enregistrés vont dans le dossier des téléchargements.
ui-handover-share = Envoyer le fichier
ui-handover-size = { $size } Mo
ui-import = Reprendre des visites d’un autre appareil
ui-import-about = Choisissez un fichier .steady, ou déposez-le ici. Les visites déjà ici s’enrichissent de ce qui est nouveau ; rien n’est écrasé.
ui-import-choose = Choisir un fichier
ui-import-sending = Lecture … { $percent } %
ui-import-taking = Vérification et reprise …
ui-import-done = { $taken ->
    [0] Tout ce que contient le fichier était déjà ici.
    [one] 1 visite reprise.
   *[other] { $taken } visites reprises.
}
ui-import-unchanged = { $unchanged ->
    [one] 1 visite était déjà ici.
   *[other] { $unchanged } visites étaient déjà ici.
}
ui-import-erased = { $erased ->
    [one] 1 visite a été effacée ici et reste effacée.
   *[other] { $erased } visites ont été effacées ici et restent effacées.
}
ui-erase-visit = Effacer cette visite
ui-erase-visit-about = Si le client veut qu’elle disparaisse. Le registre et les photos de cette visite sont enlevés de cet appareil pour de bon, et un fichier repris plus tard ne la fait pas revenir. Les documents et fichiers enregistrés ou envoyés avant ne sont pas atteints.
ui-erase-visit-word = Pour confirmer, tapez { $word }
ui-erase-visit-now = Effacer pour de bon
