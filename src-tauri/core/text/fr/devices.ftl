### Appareils et leurs clés : qui a écrit quoi, à qui se fier, ce qu’un fichier apporte. Refus comme dans errors.ftl.

## Refus.
error-key-unreadable = La clé de cet appareil ne peut pas être lue
error-key-unreadable-help = Elle sert à signer ce qui est noté. Mettez ce dossier de données de côté et restaurez sa dernière sauvegarde dans un nouveau.
error-handover-before-signatures = Le fichier de passation a été fait avant que les lignes soient signées
error-handover-before-signatures-help = Mettez Steady à jour sur l’appareil d’où il vient, et faites-y refaire le fichier. Rien n’a été repris.
error-handover-unproven = Rien ne prouve qu’une ligne du fichier de passation vient de son auteur
error-handover-unproven-help = Ne vous fiez pas à cette copie. Faites refaire le fichier sur l’appareil qui a écrit la visite. Rien n’en a été repris.
error-handover-unsigned = Le fichier de passation contient des lignes d’avant les signatures
error-handover-unsigned-help = Personne ne peut prouver qui les a écrites ; elles n’entrent que depuis une sauvegarde à vous. Rien de la visite n’a été repris.
error-handover-own-name = Le fichier de passation contient des lignes au nom de cet appareil qu’il n’a pas
error-handover-own-name-help = Cet appareil ne s’apporte rien à lui-même. Si son dossier de données a été copié ou remis à un jour antérieur, restaurez sa dernière sauvegarde ; sinon, ne vous fiez pas au fichier. Rien de la visite n’a été repris.
error-handover-retired = Le fichier de passation contient de nouvelles lignes d’un appareil mis hors service ici
error-handover-retired-help = Un appareil perdu peut être en d’autres mains. S’il est retrouvé, remettez-le sous Réglages, Appareils, puis reprenez le fichier. Rien de la visite n’a été repris.
error-handover-ahead = Le fichier de passation contient des lignes datées loin dans l’avenir
error-handover-ahead-help = Comparez la date et l’heure des deux appareils. Corrigez celui qui a tort et reprenez le fichier une fois cette date venue. Rien de la visite n’a été repris.
error-handover-opened-twice = Une visite du fichier de passation en est une autre ici
error-handover-opened-twice-help = Deux appareils disent l’avoir ouverte, ce qui ne peut pas être. Si celle d’ici est venue d’une reprise à laquelle vous ne vous fiez pas, annulez d’abord cette reprise. Rien de la visite n’a été repris.
error-unknown-device = Cet appareil n’est pas connu ici
error-unknown-device-help = Ouvrez de nouveau Réglages, Appareils. Rien n’a été changé.
error-code-differs = Ce code n’est pas celui de l’appareil
error-code-differs-help = Relisez-le sur l’écran de l’autre appareil, sous Réglages, Appareils. S’il diffère encore, ne vous fiez pas à ce qui en est venu. Rien n’a été confirmé.
error-device-name-too-long = Le nom de l’appareil est trop long
error-device-name-too-long-help = Jusqu’à 60 caractères. Rien n’a été changé.
error-unknown-import = Cette reprise n’est pas connue ici, ou a déjà été annulée
error-unknown-import-help = Ouvrez de nouveau Réglages, Appareils. Rien n’a été changé.

## Ce qui est prouvé, sur le constat et la note.
field-signed = Preuve
signed-this-device = { $entries ->
    [one] 1 ligne signée par cet appareil.
   *[other] { $entries } lignes signées par cet appareil.
}
signed-confirmed = { $entries ->
    [one] 1 ligne signée par { $device }, un appareil confirmé.
   *[other] { $entries } lignes signées par { $device }, un appareil confirmé.
}
signed-not-confirmed = { $entries ->
    [one] 1 ligne signée par { $device }, un appareil pas encore confirmé.
   *[other] { $entries } lignes signées par { $device }, un appareil pas encore confirmé.
}
signed-retired = { $entries ->
    [one] 1 ligne signée par { $device }, un appareil hors service.
   *[other] { $entries } lignes signées par { $device }, un appareil hors service.
}
signed-before-signatures = { $entries ->
    [one] 1 ligne d’avant les signatures.
   *[other] { $entries } lignes d’avant les signatures.
}
unknown-device = { $entries ->
    [one] 1 ligne vient d’un appareil qui n’est pas confirmé ici.
   *[other] { $entries } lignes viennent d’un appareil qui n’est pas confirmé ici.
}
unknown-unsigned = { $entries ->
    [one] 1 ligne date d’avant les signatures. Rien ne prouve qui l’a écrite.
   *[other] { $entries } lignes datent d’avant les signatures. Rien ne prouve qui les a écrites.
}
note-device = Une partie de ce relevé vient d’un appareil que nous n’avons pas encore confirmé comme le nôtre.
note-unsigned = Une partie de ce relevé est plus ancienne que nos signatures. Nous ne pouvons pas prouver qui l’a écrite.
