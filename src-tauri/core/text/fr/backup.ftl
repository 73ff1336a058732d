### Sauvegardes : pourquoi l’une n’a pas été faite ou reprise, et que faire.

error-backup-folder = Ce dossier n’est pas une sauvegarde de Steady
error-backup-folder-help = Nommez un dossier vide, ou un dossier où une sauvegarde a déjà été faite. Il a été laissé tel quel.
error-backup-file = Ce fichier n’est pas une sauvegarde de Steady
error-backup-file-help = Choisissez un fichier que Steady a enregistré comme sauvegarde ; son nom commence par steady-backup. Rien n’a été repris.
error-backup-of-another = Ce dossier est la sauvegarde d’un autre dossier de données
error-backup-of-another-help = Nommez le dossier qui va avec ces données, ou un dossier vide. Si le dossier de données était mal écrit, nommez le bon. Rien n’a été changé.
error-backup-inside-data = Ce dossier se trouve dans le dossier de données lui-même
error-backup-inside-data-help = Nommez un dossier sur un autre disque, pour qu’une panne n’emporte pas les deux.
error-backup-link = Dans le dossier de la sauvegarde se trouve un lien là où il faut un fichier ou un dossier
error-backup-link-help = Nommez un autre dossier, ou retirez le lien. Steady n’écrit rien à travers un lien.
error-backup-busy = Un autre Steady travaille sur cette sauvegarde
error-backup-busy-help = Attendez qu’il ait fini, puis réessayez.
error-backup-newer = La sauvegarde vient d’un Steady plus récent
error-backup-newer-help = Mettez d’abord Steady à jour. La sauvegarde a été laissée telle quelle.
error-backup-would-lose = Des visites de la dernière sauvegarde ne sont plus ici, et personne ne les a effacées
error-backup-would-lose-help = Le dossier de données était-il mal écrit, ou la base est-elle endommagée ? Reprenez d’abord la sauvegarde, puis sauvegardez de nouveau. Rien n’a été changé.
error-backup-damaged = Un fichier de la sauvegarde manque ou est endommagé
error-backup-damaged-help = Essayez la sauvegarde d’une autre date. Rien n’a été changé. Pour continuer à sauvegarder, nommez un dossier vide et gardez celui-ci.
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
ui-restore = Reprendre une sauvegarde
ui-restore-about = Choisissez un fichier de sauvegarde. Ce qu’il contient et que cet appareil n’a pas est repris, les photos endommagées sont réparées, et rien n’est écrasé. Une base de données endommagée de Steady peut aussi être choisie : chaque visite encore lisible en entier est reprise.
ui-restore-choose = Choisir un fichier de sauvegarde
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
ui-restore-photos-missing = { $photos ->
    [one] 1 photo n’est entière ni ici ni dans la sauvegarde.
   *[other] { $photos } photos ne sont entières ni ici ni dans la sauvegarde.
}
ui-photo-damaged = Le fichier de cette photo manque ou est endommagé : elle n’est donc pas montrée et ne prouve rien. Reprenez une bonne copie : d’une sauvegarde, ou d’un appareil qui l’a.
