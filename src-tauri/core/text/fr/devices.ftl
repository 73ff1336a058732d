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
