### Sauvegardes : pourquoi l’une n’a pas été faite ou reprise, et que faire.

error-backup-folder = Ce dossier n’est pas une sauvegarde de Steady
error-backup-folder-help = Nommez un dossier vide, ou un dossier où une sauvegarde a déjà été faite. Il a été laissé tel quel.
error-backup-file = Ce fichier n’est pas une sauvegarde de Steady
error-backup-file-help = Choisissez un fichier que Steady a enregistré comme sauvegarde ; son nom commence par steady-backup. Rien n’a été repris.
error-backup-of-another = Ce dossier est la sauvegarde d’un autre dossier de données
error-backup-of-another-help = Nommez le dossier qui va avec ces données, ou un dossier vide. Après une reprise dans un nouveau dossier de données, c’est normal : nommez un dossier vide. Si le dossier de données était mal écrit, nommez le bon. Rien n’a été changé.
error-backup-inside-data = Ce dossier se trouve dans le dossier de données lui-même
error-backup-inside-data-help = Nommez un dossier sur un autre disque, pour qu’une panne n’emporte pas les deux.
error-backup-link = Dans le dossier de la sauvegarde se trouve un lien là où il faut un fichier ou un dossier
error-backup-link-help = Nommez un autre dossier, ou retirez le lien. Steady n’écrit rien à travers un lien.
error-backup-unwritable = L’emplacement de la sauvegarde ne peut pas être écrit
error-backup-unwritable-help = Indiquez un dossier où cet utilisateur peut écrire, sur un disque non protégé en écriture. Les données sont inchangées.
error-backup-busy = Un autre Steady travaille sur cette sauvegarde
error-backup-busy-help = Attendez qu’il ait fini, puis réessayez.
error-backup-newer = La sauvegarde vient d’un Steady plus récent
error-backup-newer-help = Mettez d’abord Steady à jour. La sauvegarde a été laissée telle quelle.
error-backup-would-lose = Des visites de la dernière sauvegarde ne sont plus ici, et personne ne les a effacées
error-backup-would-lose-help = Le dossier de données était-il mal écrit, ou la base est-elle endommagée ? Reprenez d’abord la sauvegarde, puis sauvegardez de nouveau. Rien n’a été changé.
error-backup-damaged = Un fichier de la sauvegarde manque ou est endommagé
error-backup-damaged-help = Essayez la sauvegarde d’une autre date. Rien n’a été changé. Pour continuer à sauvegarder, nommez un dossier vide et gardez celui-ci.
error-backup-unread = Un fichier de la sauvegarde est là et n’a pas pu être lu
error-backup-unread-help = Le disque ou son câble est peut-être défaillant. Réessayez. Si cela échoue encore, sauvegardez dans un dossier vide sur un autre disque et gardez celui-ci.
error-backup-forked = Ces données et la dernière sauvegarde ont continué différemment à partir du même début
error-backup-forked-help = Une copie du dossier de données est aussi utilisée, et c’est elle qui a écrit cette sauvegarde. Nommez un dossier vide pour la sauvegarde de celui-ci, et gardez les deux sauvegardes. Ne travaillez ensuite que dans l’un des deux dossiers. Rien n’a été changé.
error-backup-checked = Des fichiers de la sauvegarde sont endommagés
error-backup-checked-help = Ils sont nommés ci-dessus. Sauvegardez de nouveau : ce qui est intact dans le dossier de données est réécrit. Vérifiez ensuite encore une fois ; ce qui reste endommagé n’existe que dans cette sauvegarde, gardez-la donc et continuez dans un dossier vide.
error-read-while-written = Les données ont été modifiées pendant leur lecture
error-read-while-written-help = Fermez le Steady qui utilise ce dossier, puis réessayez. Rien n’a été repris.
error-photos-unhealed = Tout a été repris, mais des photos endommagées ici n’ont pas pu être remplacées
error-photos-unhealed-help = Vérifiez que le dossier photos du dossier de données peut être écrit, puis reprenez la même chose encore une fois.
error-backup-not-verified = Ce qui a été écrit ne se relit pas tel quel
error-backup-not-verified-help = Le disque est peut-être défaillant. Sauvegardez maintenant sur un autre. Les sauvegardes précédentes ont été laissées telles quelles.
error-backup-no-generation = La sauvegarde ne contient rien de cette date
error-backup-no-generation-help = Affichez ce qu’elle contient et nommez l’une de ces dates, ou aucune.
error-backup-data-damaged = La base du dossier de données est endommagée, rien n’a donc été sauvegardé
error-backup-data-damaged-help = Démarrez Steady : il met la base de côté, entière. Reprenez ensuite la dernière sauvegarde, laissée telle quelle.
error-no-data = Il n’y a pas de visites dans ce dossier de données
error-no-data-help = Vérifiez que le dossier de données est le bon. Rien n’a été créé.
error-photo-damaged = Le fichier de la photo n’est pas celui qui a été gardé
error-photo-damaged-help = Il a été endommagé ou changé, et n’est pas montré comme preuve. Reprenez une bonne copie : d’une sauvegarde, ou d’un appareil qui l’a.

## The screens.
ui-backup = Sauvegarde
ui-backup-about = Tout dans un fichier : visites, photos, réglages propres à l’atelier. Gardez-le hors de cet appareil. Il contient des noms de clients.
ui-backup-make = Faire une sauvegarde
ui-backup-making = Chaque photo est lue et rangée … { $percent } %
ui-backup-save = Enregistrer la sauvegarde
ui-backup-holds = { $visits ->
    [one] 1 visite
   *[other] { $visits } visites
}, { $size } Mo
ui-backup-photos-missing = { $photos ->
    [one] 1 photo manque ici ou est endommagée, et n’y est pas. Reprenez d’abord une sauvegarde antérieure.
   *[other] { $photos } photos manquent ici ou sont endommagées, et n’y sont pas. Reprenez d’abord une sauvegarde antérieure.
}
ui-backup-broken = { $visits ->
    [one] Le registre de 1 visite est abîmé. Elle y est telle quelle : gardez aussi une sauvegarde antérieure.
   *[other] Les registres de { $visits } visites sont abîmés. Elles y sont telles quelles : gardez aussi une sauvegarde antérieure.
}
ui-backup-own-left-out = { $files ->
    [one] 1 fichier propre à l’atelier est trop grand, porte un nom que tous les systèmes n’acceptent pas ou est en trop, et a été laissé de côté.
   *[other] { $files } fichiers propres à l’atelier sont trop grands, portent des noms que tous les systèmes n’acceptent pas ou sont trop nombreux, et ont été laissés de côté.
}
ui-restore = Reprendre une sauvegarde
ui-restore-about = Choisissez un fichier de sauvegarde. Ce qu’il contient et que cet appareil n’a pas est repris, les photos endommagées sont réparées, et rien n’est écrasé. Une base de données endommagée de Steady peut aussi être choisie : chaque visite encore lisible en entier est reprise.
ui-restore-choose = Choisir un fichier de sauvegarde
ui-restore-mended = { $entries ->
    [one] 1 ligne endommagée est de nouveau entière.
   *[other] { $entries } lignes endommagées sont de nouveau entières.
}
ui-restore-healed = { $photos ->
    [one] 1 photo endommagée est de nouveau entière.
   *[other] { $photos } photos endommagées sont de nouveau entières.
}
ui-restore-devices = { $devices ->
    [one] Ce qui avait été décidé sur 1 appareil est venu avec. Voyez-le sous Réglages, Appareils ; vous pouvez y recommencer avec lui.
   *[other] Ce qui avait été décidé sur { $devices } appareils est venu avec. Voyez-les sous Réglages, Appareils ; vous pouvez y recommencer avec chacun.
}
ui-restore-differs = { $visits ->
    [one] 1 visite continue autrement ici et est restée telle quelle.
   *[other] { $visits } visites continuent autrement ici et sont restées telles quelles.
}
ui-restore-damaged = { $visits ->
    [one] 1 visite est endommagée dans la sauvegarde et y est restée. Essayez une sauvegarde antérieure.
   *[other] { $visits } visites sont endommagées dans la sauvegarde et y sont restées. Essayez une sauvegarde antérieure.
}
ui-restore-of-another = Elle n’est pas de cet appareil : à qui elle se fie et ce qui y a été effacé n’est pas venu avec, et aucun appareil non confirmé ici n’a rendu un classement plus clément.
ui-restore-files-damaged = { $files ->
    [one] 1 fichier de la sauvegarde est endommagé et a été laissé de côté. Tout le reste est venu.
   *[other] { $files } fichiers de la sauvegarde sont endommagés et ont été laissés de côté. Tout le reste est venu.
}
ui-restore-photos-missing = { $photos ->
    [one] 1 photo n’est entière ni ici ni dans la sauvegarde.
   *[other] { $photos } photos ne sont entières ni ici ni dans la sauvegarde.
}
ui-photo-damaged = Le fichier de cette photo manque ou est endommagé : elle n’est donc pas montrée et ne prouve rien. Reprenez une bonne copie : d’une sauvegarde, ou d’un appareil qui l’a.
