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
error-handover-held-back = Une partie de la visite a été laissée de côté
error-handover-held-back-help = Ses dernières entrées viennent d’un appareil retiré ici, ou portent une date bien en avance. Tout le reste de la visite a été repris, et compte.
error-handover-milder = Ce que dit une visite changerait par un appareil que personne n’a confirmé ici
error-handover-milder-help = Regardez son code sous Réglages, Appareils sur l’appareil qui l’a écrite et comparez-le d’abord ici ; reprenez ensuite le fichier. D’ici là, la visite reste ce qu’elle est. Rien de la visite n’a été repris.
error-handover-writers = Plus d’appareils ont écrit dans le fichier de passation qu’aucun atelier n’en a
error-handover-writers-help = Ne vous y fiez pas, sauf si quelqu’un que vous connaissez peut dire comment il a été fait. Rien de la visite n’a été repris.
error-unknown-device = Cet appareil n’est pas connu ici
error-unknown-device-help = Ouvrez de nouveau Réglages, Appareils. Rien n’a été changé.
error-code-differs = Ce code n’est pas celui de l’appareil
error-code-differs-help = Relisez-le sur l’écran de l’autre appareil, sous Réglages, Appareils. S’il diffère encore, ne vous fiez pas à ce qui en est venu. Rien n’a été confirmé.
error-no-device-in-photo = Aucun code d’appareil n’a été trouvé sur la photo
error-no-device-in-photo-help = Ouvrez Réglages, Appareils sur l’autre appareil, affichez-y son code QR, remplissez-en la moitié de l’image et recommencez ; ou comparez les chiffres. Rien n’a été confirmé.
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
note-proven = Chaque partie de ce registre est signée par un de nos appareils et reste telle qu’elle a été écrite.
note-device = Une partie de ce registre vient d’un appareil que nous n’avons pas encore confirmé comme le nôtre.
note-unsigned = Une partie de ce registre est plus ancienne que nos signatures. Nous ne pouvons pas prouver qui l’a écrite.

## Sur les écrans.
ui-devices = Appareils
ui-devices-about = Chaque appareil signe ce qui y est écrit. Comparez son code une fois, et l’on sait que ce qui en vient est bien de lui.
ui-this-device = Cet appareil
ui-this-device-about = Montrez ce code à qui le compare sur un autre appareil, ou lisez-le-lui.
ui-device-qr = L’afficher en code QR
ui-device-qr-of = Code QR de la clé de cet appareil
ui-device-qr-about = Un autre appareil le lit sous Réglages, Appareils, au lieu de comparer les chiffres.
ui-other-devices = Autres appareils
ui-other-devices-none = Aucun pour l’instant. Un appareil figure ici dès que quelque chose en a été repris.
ui-device-unnamed = Appareil sans nom
ui-device-met = Vu la première fois : { $when }
ui-trust-this-device = Cet appareil
ui-trust-confirmed = Confirmé
ui-trust-not-confirmed = Pas encore confirmé
ui-trust-retired = Hors service : rien de nouveau n’en est repris
ui-trust-before-signatures = D’avant les signatures
ui-from-confirmed = Écrit sur { $device }
ui-from-not-confirmed = D’un appareil pas encore confirmé
ui-from-retired = D’un appareil mis hors service
ui-from-before-signatures = Écrit avant les signatures
ui-compare = Comparer son code
ui-compare-about = Ouvrez Réglages, Appareils sur l’autre appareil. « Cet appareil » y montre-t-il le même code, chiffre par chiffre ?
ui-compare-scan = Lire son code QR
ui-compare-scanning = Recherche de son code …
ui-compare-same = C’est le même
ui-compare-differs = Il diffère
ui-compare-differs-told = Alors cela ne vient pas de l’appareil devant vous. Ne vous y fiez pas. Rien n’a été confirmé.
ui-device-name = Nom de l’appareil
ui-device-name-keep = Garder le nom
ui-device-retire = Mettre hors service
ui-device-retire-about = Pour un appareil perdu ou remplacé. Ce qui est ici reste ; rien de nouveau n’en est repris.
ui-device-take-over = Cet appareil l’a remplacé
ui-device-take-over-about = Pour un téléphone à vous, perdu ou remplacé, dont la sauvegarde a été reprise ici. Ce qu’il a écrit compte comme confirmé ; rien de nouveau n’entre plus de lui.
ui-device-reset = Repartir de zéro
ui-device-reset-about = Il compte comme pas encore confirmé, comme la première fois. Ce qui a été décidé avant reste écrit.
ui-decided = Ce qui a été décidé
ui-decided-confirmed = Confirmé par { $by }, { $when }
ui-decided-named = Appelé « { $name } » par { $by }, { $when }
ui-decided-retired = Mis hors service par { $by }, { $when }
ui-decided-reset = Reparti de zéro par { $by }, { $when }
ui-imports = Ce qui a été repris
ui-imports-none = Aucun fichier n’a été repris pour l’instant.
ui-import-brought = { $visits ->
    [one] 1 visite, { $when }
   *[other] { $visits } visites, { $when }
}
ui-import-was-taken-back = Annulé : { $when }
ui-import-back = Annuler cette reprise
ui-import-back-about = Ce qu’elle a apporté est de nouveau laissé dehors, et ses visites se lisent comme avant. Une visite que cet appareil a poursuivie reste telle quelle.
ui-import-back-now = L’annuler
ui-import-gone = { $visits ->
    [one] 1 visite est de nouveau hors de la liste.
   *[other] { $visits } visites sont de nouveau hors de la liste.
}
ui-import-restored = { $visits ->
    [one] 1 visite se lit comme avant.
   *[other] { $visits } visites se lisent comme avant.
}
ui-import-stayed = { $visits ->
    [one] 1 visite reste : cet appareil l’a poursuivie.
   *[other] { $visits } visites restent : cet appareil les a poursuivies.
}
ui-preview = Reprendre ceci ?
ui-preview-looking = Examen de ce qui changerait …
ui-preview-made = Fait { $when }, à l’heure de cet appareil
ui-preview-brings = { $entries ->
    [one] Cela apporte 1 nouvelle ligne.
   *[other] Cela apporte { $entries } nouvelles lignes.
}
ui-preview-mends = { $entries ->
    [one] 1 ligne endommagée ici serait de nouveau entière.
   *[other] { $entries } lignes endommagées ici seraient de nouveau entières.
}
ui-preview-nothing = Tout ce qu’il contient est déjà ici.
ui-preview-is-new = Nouvelle ici
ui-preview-milder = Son classement deviendrait plus clément
ui-preview-now = Maintenant
ui-preview-then = Ensuite
ui-preview-apart = { $visits ->
    [one] 1 visite du fichier reste dehors :
   *[other] { $visits } visites du fichier restent dehors :
}
ui-preview-take = Reprendre
ui-preview-leave = Ne pas reprendre
ui-preview-left = Rien n’a été repris.
