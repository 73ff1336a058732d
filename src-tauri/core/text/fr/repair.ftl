### Le compte rendu de réparation.

bore-line-size = Diamètre moyen { $size }, ± { $expanded }.
bore-line-size-unknown = Diamètre moyen non mesuré.
bore-line-ovality = Plus grande ovalisation { $value }, ± { $expanded }.
bore-line-roundness = Plus grand défaut de circularité { $value } (zone minimale), ± { $expanded }.
bore-line-roundness-least = Défaut de circularité d’au moins { $value }, ± { $expanded } : cette façon de mesurer ne voit pas certaines formes.
bore-line-taper-wider = Plus large de la face vers l’intérieur de { $value }, ± { $expanded }.
bore-line-taper-narrower = Plus étroit de la face vers l’intérieur de { $value }, ± { $expanded }.
bore-line-taper-none = Aucune conicité établie : { $value }, ± { $expanded }.

repair-title = Compte rendu de réparation : logement du roulement de l’arbre de transmission
repair-foot = Compte rendu de réparation, visite { $visit }. Ce qui n’est pas noté ici n’a pas été mesuré.
repair-bore-found = Alésage tel que trouvé
repair-bore-finished = Alésage fini
repair-bore-caption = Profondeur { $depth }, la moins ronde. Écart dessiné { $times } fois plus grand ; tirets : rond. { $turn ->
    [clockwise] Les angles comptent dans le sens horaire depuis 0°.
   *[counter] Les angles comptent dans le sens antihoraire depuis 0°.
    }
repair-bore-alt = Dessin polaire de l’alésage à la profondeur { $depth }, son écart au rond dessiné { $times } fois plus grand. Les phrases à côté en donnent les valeurs.
repair-heading-gates = Conditions confirmées
repair-heading-plan = Plan de reprise
repair-heading-passes = Passes faites
repair-heading-fit = Ajustement
repair-heading-ring = Roulement tourné à la main après remontage
repair-heading-notes = Visserie et couples
repair-not-recorded = Non noté.
repair-gate = { $gate } ({ $by }, { $at })
repair-pass = Passe { $pass }, contact de l’outil : { $contact } ({ $by }, { $at }).
repair-pass-measured = Passe { $pass }, contact de l’outil : { $contact } ; diamètre { $diameter } ({ $by }, { $at }).
repair-contact-none = nulle part
repair-contact-partly = par endroits
repair-contact-all-round = tout autour
repair-ring-free = Il tourne librement ({ $by }, { $at }).
repair-ring-stiff = IL TOURNE DUR ({ $by }, { $at }). Le logement serre le roulement : cette réparation ne tiendra pas.
repair-ring-rough = IL TOURNE AVEC DES ACCROCS ({ $by }, { $at }). Le roulement est abîmé : cette réparation ne tiendra pas.
repair-note = { $text } ({ $by }, { $at })
repair-photo-bench-found = Alésage tel que trouvé
repair-photo-bench-finished = Alésage fini
repair-photo-bench-ring = Roulement tourné à la main
repair-photo-pass = Après la passe { $pass }
repair-photo-alt = Photo du travail : { $caption }.
repair-caution-rating = Ce compte rendu n’est pas un classement : après la réparation, cherchez du jeu à la main avant que la voiture roule. Ce contrôle est une visite à part.
repair-caution-maker = La procédure, les cotes et les couples du constructeur passent avant ce compte rendu, et la loi locale aussi.
repair-caution-measured = Les valeurs tiennent pour les endroits et les angles mesurés, avec l’incertitude donnée à côté.
repair-caution-torque = Visserie neuve, au couple du constructeur. Un couple écrit ici est celui que l’atelier dit avoir utilisé.

entry-gauged = Comparateur lu
entry-bore-found = Alésage mesuré tel que trouvé
entry-bore-finished = Alésage mesuré une fois fini
entry-housing-looked = Palier regardé à l’établi
entry-pass-cut = Passe faite
entry-fit-given = Ajustement calculé
entry-ring-turned = Roulement tourné à la main
entry-bench-noted = Note de l’établi
