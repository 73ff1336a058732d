### Le contrôle à la main comme chemin à part, et ce qui porte la voiture.

ui-lift-kind = Qu’est-ce qui porte la voiture ?
ui-lift-kind-why = Ses conditions suivent, sept au plus.
lift-two-post = Pont à deux colonnes
lift-platform = Pont à plateaux
lift-pit = Fosse
lift-ramps = Rampes
lift-stands = Chandelles

order-hands-on = Le contrôle à la main seul
ui-order-hands-on-about = Sous la voiture : regarder le support, sentir le jeu dans les deux sens, et le classement est là. Le reste peut suivre.
ui-find-out-why = Chercher d’où vient le bruit
ui-find-out-why-about = Le contrôle à la main est fait. Les autres étapes cherchent la cause.
ui-leave-part = Quitter cette partie
ui-lift-changed = Voiture descendue ou déplacée, ou quelqu’un dedans ? Quittez d’abord cette partie.
ui-gate-again = Déjà confirmée par { $by }, { $when }.
ui-gate-again-part = Ce n’est plus vrai ? Quittez cette partie : ses conditions sont alors confirmées de nouveau.

## Annuler la dernière entrée : laquelle, avant qu’elle parte.
ui-undo-by = De { $by }, { $when }
ui-undo-others = Cette entrée est de { $by }, pas de vous. L’annuler ?
ui-undo-do = L’annuler
ui-undo-keep = La laisser
ui-undone = Annulé : { $what }
ui-undone-what = { $about ->
    [none] { $what }
   *[other] { $what }, { $about }
}
ui-redo = L’entrer de nouveau
ui-redo-gate = Une condition se confirme de nouveau à la voiture, dans sa ligne.
ui-redo-photo = Une photo se reprend avec l’appareil.
ui-redo-gauge = Les lectures se saisissent de nouveau sur l’écran du comparateur.

## À côté du bouton qui a été touché.
ui-recorded = C’est noté.
