### Les phrases du constat (pour l'atelier) et de la note (pour le client), et comment se lisent nombres et dates.
### Signes des nombres et pourcentages, ordre de la date : Unicode CLDR, langue fr.

number-group = { "\u202F" }
number-group-from = 4
number-point = { "," }
list-joint = { ", " }
reading-rpm = { $value } tr/min
percent = { $number } %
percent-below = moins de { $number } %
percent-above = plus de { $number } %
date-day = { $day } { $month } { $year }
month-1 = janvier
month-2 = février
month-3 = mars
month-4 = avril
month-5 = mai
month-6 = juin
month-7 = juillet
month-8 = août
month-9 = septembre
month-10 = octobre
month-11 = novembre
month-12 = décembre
time-utc = { $day }/{ $month }/{ $year }, { $clock } UTC
length-mm = { $mm } mm
length-both = { $mm } mm ({ $thou } millièmes de pouce)
length-shown = mm
answer-missing = Pas contrôlé
word-none-yet = aucun encore

## Le constat.

finding-title = Constat : arbre de transmission et son palier
finding-heading-next = Que faire ensuite
finding-heading-vehicle = Véhicule et visite
finding-heading-complaint = Symptôme signalé
finding-heading-reasons = Pourquoi ce classement
finding-heading-suspicion = Ce qui fait naître un soupçon
finding-heading-steps = Ce qui a été contrôlé
finding-heading-causes = Causes, la plus probable d’abord
finding-heading-causes-found = Causes, d’abord ce qui explique ce qui a été trouvé
finding-heading-unknown = Ce qui n’est pas connu
finding-heading-road = Règles de contrôle des véhicules (Royaume-Uni, UE), pour information
finding-heading-cautions = Réserves
finding-heading-signed = Reçu de la note du client

finding-sum-danger = DANGER : ne roulez pas avec cette voiture.
finding-sum-warning = AVERTISSEMENT : ne pas rouler. À faire transporter sur une dépanneuse pour réparation.
finding-sum-repaired = Réparé depuis : après le remontage, le roulement tournait librement à la main. Le classement dit ce qui avait été trouvé avant.
finding-sum-caution = ATTENTION : prenez rendez-vous pour la réparation.
finding-sum-notice = AVIS : rien à faire au roulement.
finding-sum-unrated = PAS ENCORE CONTRÔLÉ : le contrôle à la main reste à faire, il n’y a donc pas de classement.
finding-sum-suspicion = Simple soupçon : { $reason }
finding-sum-still = Le contrôle à la main n’est pas fini.
finding-sum-likely = Le plus probable : { $causes }.
finding-sum-no-cause = Aucune cause ne se détache à elle seule.
finding-sum-bearing = Au moins une cause au roulement : { $bearing }.
finding-sum-nothing-yet = Rien n’a encore été noté, les causes ne sont donc pas triées.
finding-cause-share = { $cause } ({ $percent })

finding-next-danger = Ne pas rouler, pas d’essai sur route, ne plus démarrer le moteur. La charger sur une dépanneuse moteur coupé ; ne pas la remorquer sur ses roues motrices.
finding-next-danger-owner = Dites-le au client aujourd’hui, et faites-lui signer le reçu de la note.
finding-next-warning = Ne la rendez pas pour rouler. Faites-la transporter sur une dépanneuse pour réparation, moteur coupé, sans la remorquer sur ses roues motrices.
finding-next-repaired = Avant de rendre la voiture, cherchez de nouveau du jeu à la main, à froid et à chaud. Jusque-là, le classement ci-dessus reste.
finding-next-warning-owner = Donnez la note au client, et chiffrez la réparation.
finding-next-caution = Prenez rendez-vous pour la réparation, et chiffrez les défauts trouvés.
finding-next-caution-owner = Donnez la note au client. Demandez-lui de revenir si le bruit ou la vibration augmente.
finding-next-notice = Ne chiffrez aucun travail au roulement.
finding-next-notice-owner = Donnez la note au client. Demandez-lui de revenir si le bruit revient ou change.
finding-next-unrated = Ne la déclarez ni bonne ni mauvaise : bruit et vibration ne prouvent rien.
finding-next-unrated-owner = Chiffrez une réparation seulement après le contrôle à la main.
finding-next-finish = Finissez le contrôle : { $steps }.
finding-next-check = Prochain contrôle : { $step }. { $why }
finding-next-maker = Avant toute réparation, lisez la procédure du constructeur pour cette voiture.

field-label = Marque et modèle
field-plate = Immatriculation
field-vin = VIN
field-layout = Disposition de l’arbre
field-seat = Logement du roulement
field-gearbox = Boîte
field-cylinders = Cylindres
field-idle = Plage de ralenti
field-idle-value = { $low } à { $high } tr/min
field-odometer = Compteur
field-odometer-km = { $value } km
field-odometer-miles = { $value } miles
field-maker-play = Mouvement selon le constructeur
field-owner = Client
field-contact = Contact
field-vehicle = Véhicule
field-opened = Voiture arrivée
field-checked = Dernier contrôle
field-date = Date (UTC)
field-technician = Contrôlé par
field-visit = Visite
field-ledger = Registre
field-ledger-value = { $entries ->
    [one] { $entries } inscription, dernière empreinte { $head }
   *[other] { $entries } inscriptions, dernière empreinte { $head }
}
field-ledger-broken = Défaut du registre
field-ledger-broken-value = À partir de l’inscription { $at }, le registre ne tient pas. Des inscriptions peuvent être changées ou absentes.
field-knowledge = Règles et valeurs
field-complaint = Avec les mots du client
field-complaint-none = Rien de noté
field-sounds = Ce que le client remarque
field-when = Quand cela arrive

reason-rests-on = { $reason } Repose sur : { $answers }.
answer-at-step = { $step } : { $answer }
answer-and-gauge = { $answer } à la main, mouvement prouvé au comparateur
weight-strong = { $answer } (fort)
weight-clear = { $answer } (net)
weight-slight = { $answer } (faible)
weight-by-gauge = { $answer } (au comparateur)

detail-answered = { $at }, par { $by }
detail-cold = Senti avec le palier froid
detail-warm = Senti avec le palier chaud
detail-no-temperature = Froid ou chaud n’a pas été noté
detail-milder = Changé après une réponse DANGER ou AVERTISSEMENT. Raison donnée : { $reason }
detail-milder-again = Changée ou retirée une fois, puis saisie de nouveau ; elle reste valable. Raison donnée : { $reason }
detail-disputed = Deux appareils ont noté des réponses différentes. La pire compte.
photo-caption = { $step } : { $answer }
photo-alt = Photo prise à l’étape « { $step } ». Réponse notée : { $answer }.
photo-none = Pas de photo : { $reason }
photo-none-taken = Aucune photo n’a été prise. Steady a noté de lui-même qu’il n’y avait rien à montrer.

unknown-hands-on = { $step } : pas fait. Seul le contrôle à la main décide.
unknown-unsure = { $step } : fait, mais resté incertain ; traité comme non réussi.
unknown-disputed = { $step } : deux appareils ont noté des réponses différentes.
unknown-open = { $count ->
    [one] Une autre étape n’a pas été contrôlée.
   *[other] { $count } autres étapes n’ont pas été contrôlées.
}
unknown-cold = Bourdonnement, cognement ou vibration avec un contrôle à froid : un logement peut se desserrer à chaud. Cherchez encore du jeu, palier chaud.
unknown-not-reproduced = Non reproduit : rien n’a été entendu moteur tournant.
unknown-not-listened = Non reproduit : aucun contrôle moteur tournant n’a été fait, donc personne n’a écouté.
unknown-figure = Le mouvement a été jugé d’après la valeur du constructeur, mais cette valeur n’est pas notée. Entrez-la à la réception.
unknown-ledger = Le registre ne tient pas à partir de l’inscription { $at }.

caution-scope = Ce constat porte sur ce qui a été contrôlé, tel que c’était ce jour-là. Les pièces non nommées n’ont pas été contrôlées.
caution-sorting = Les probabilités reposent sur l’avis de l’atelier et ne sont pas mesurées. Pour le roulement, seul le contrôle à la main décide.
caution-maker = Les procédures du constructeur et la loi locale passent avant ce constat.
caution-quote = Ceci n’est ni un devis ni une expertise pour un tribunal.

signed-text = { $decision }. Note reçue le { $at } par { $name }.
signed-text-nameless = { $decision }. Note reçue le { $at } ; aucun nom donné.
signed-outdated = Quelque chose a été noté après cette signature : la note signée ne le dit peut-être pas.
signed-language = La note signée était dans une autre langue : { $language }.
signed-note = Signé pour la note de SHA-256 { $hash }.
signed-alt = Signature, tracée à la main.

finding-foot = Constat, visite { $visit }. Ce qui n’est pas nommé n’a pas été contrôlé.

## La note. Mots courts et phrases courtes : un client inquiet la lit une fois.

note-title = Ce que nous avons trouvé sur votre voiture
note-heading-found = Ce que nous avons trouvé
note-heading-means = Ce que cela veut dire
note-heading-could-happen = Ce qui peut arriver
note-heading-do-now = Que faire maintenant
note-heading-not-known = Ce que nous ne savons pas encore
note-heading-ask = À qui demander

note-found-unrated = Nous n’avons pas encore fait tout le contrôle à la main.
note-found-suspicion = Des signes font naître un soupçon. Seul le contrôle à la main peut le dire.
note-found-rest-open = Le reste du contrôle est encore à faire.
note-found-repaired = Cette note dit ce que nous avons trouvé avant la réparation. Le roulement a été réparé ensuite.
note-found-more = { $count ->
    [one] Il y a { $count } point de plus. L’atelier peut vous le montrer.
   *[other] Il y a { $count } points de plus. L’atelier peut vous les montrer.
}

note-means-shaft = L’arbre de transmission porte la force du moteur aux roues. Un roulement le tient bien en place.
note-means-danger = C’est notre classement le plus grave. La voiture ne doit pas rouler.
note-means-warning = Un seul de nos classements est plus grave. La voiture ne doit pas rouler.
note-means-caution = Il y a quelque chose à réparer ou à voir de plus près. N’attendez pas.
note-means-notice = Nous n’avons trouvé aucune raison de toucher au roulement maintenant.
note-means-unrated = Il n’y a pas encore de classement. Un bruit peut faire penser à un défaut, mais seul un contrôle à la main décide.
note-likely = La cause la plus probable : { $about }

note-could-movement-at-support = L’arbre peut se détacher en route. Il peut frapper la voiture ou la route. Vous pourriez perdre le contrôle.
note-could-housing-broken = Le roulement peut se détacher en route. Alors l’arbre peut frapper la voiture ou la route. Vous pourriez perdre le contrôle.
note-could-coupling-failing = Le cardan peut casser en route. Alors l’arbre peut frapper la voiture ou la route. Vous pourriez perdre le contrôle.
note-could-shaft-fibre-damaged = L’arbre peut casser en route. Des morceaux peuvent frapper la voiture ou la route. Vous pourriez perdre le contrôle.
note-could-running-stopped = Une pièce est peut-être près de casser. Si elle casse en route, vous pourriez perdre le contrôle.
note-could-rubber-play = Le caoutchouc peut se déchirer davantage. Alors l’arbre peut battre, frapper la voiture et abîmer d’autres pièces.
note-could-turns-badly = Le roulement peut chauffer, puis se bloquer ou casser. Alors l’arbre peut se détacher.
note-could-shaft-damaged = L’arbre peut trembler de plus en plus. Cela peut casser son roulement et ses cardans.
note-could-far-end-play = Le cardan peut s’user encore, jusqu’à ce que l’arbre se détache.
note-could-play-unsure = Si le roulement a du jeu, l’arbre peut se détacher en route.
note-could-bearing-likely = Si le roulement lâche, l’arbre peut se détacher en route.
note-could-cause-likely = Le défaut peut s’aggraver et abîmer d’autres pièces.
note-could-cause-likely-misfire = Le défaut peut s’aggraver. Il peut trop chauffer une pièce de l’échappement, et cette pièce coûte cher.
note-could-finding-unexplained = Nous ne pouvons pas en être sûrs. Cela peut être le début d’un défaut qui s’aggrave.
note-could-cold-check-buzz = Si le roulement a du jeu à chaud, l’arbre peut se détacher en route.
note-could-no-bearing-action = Le bruit peut revenir. Toute pièce peut s’user avec le temps.
note-could-unrated = Nous ne le savons pas encore. Si le roulement a du jeu, l’arbre peut se détacher en route.

note-now-danger = Ne roulez pas avec la voiture, même pour rentrer. Ne démarrez pas le moteur. Laissez-la ici, ou faites-la transporter sur une dépanneuse. Demandez-nous le prix de la réparation.
note-now-warning = Ne roulez pas avec la voiture. Faites-la transporter sur une dépanneuse pour réparation, moteur coupé. Elle ne doit pas être remorquée sur ses roues motrices.
note-now-caution = Prenez rendez-vous pour la réparation. Si le bruit ou les secousses augmentent, arrêtez-vous et appelez-nous.
note-now-notice = Il n’y a rien à faire au roulement maintenant. Revenez si le bruit revient ou change.
note-now-unrated = Laissez-nous finir le contrôle à la main. D’ici là, nous ne pouvons pas vous dire si vous pouvez rouler. Si la voiture cogne ou tremble plus qu’avant, arrêtez-vous et appelez-nous.
note-now-repaired = Demandez-nous si vous pouvez de nouveau rouler. Ne roulez pas avant notre accord. Si la voiture cogne ou tremble plus qu’avant, arrêtez-vous et appelez-nous.

note-open-none = Nous avons fini tout ce contrôle. Nous n’avons regardé que les pièces que nomme le constat.
note-open-play-vertical = Nous n’avons pas contrôlé à la main si l’arbre bouge de haut en bas.
note-open-play-lateral = Nous n’avons pas contrôlé à la main si l’arbre bouge de gauche à droite.
note-open-tube-open-check = Nous n’avons pas ouvert le tube pour contrôler ses roulements à la main.
note-open-turn-by-hand = Nous n’avons pas tourné l’arbre à la main.
note-unsure-play-vertical = Nous avons cherché du jeu de haut en bas, mais nous ne sommes pas sûrs.
note-unsure-play-lateral = Nous avons cherché du jeu de gauche à droite, mais nous ne sommes pas sûrs.
note-unsure-play-far-end = Nous avons cherché du jeu au bout, mais nous ne sommes pas sûrs.
note-unsure-tube-open-check = Nous avons contrôlé à la main les roulements du tube, mais nous ne sommes pas sûrs.
note-disputed = Deux de nos inscriptions ne disent pas la même chose. La pire compte.
note-open-others = { $count ->
    [one] Il reste { $count } contrôle à faire.
   *[other] Il reste { $count } contrôles à faire.
}
note-cold = Nous avons cherché du jeu à froid. À chaud, il peut y en avoir.
note-not-reproduced = Nous avons fait tourner le moteur et nous n’avons pas entendu le bruit.
note-not-listened = Nous n’avons pas lancé le moteur pour écouter, donc le bruit n’a pas été reproduit.
note-figure = Le constructeur dit quel mouvement est permis. Nous n’avons pas noté ce chiffre.
note-ledger = Notre registre de ce contrôle est peut-être incomplet, ou a peut-être été changé. Demandez à l’atelier.

note-ask-technician = Demandez à l’atelier qui vous a remis cette note. Nom noté au contrôle : { $technician }.
note-ask-workshop = Demandez à l’atelier qui vous a remis cette note.
note-ask-second = Vous pouvez aussi voir un autre atelier. Les règles du constructeur et la loi locale passent avant.

note-receipt-heading = Votre reçu
note-receipt-text = Votre signature dit seulement que vous avez reçu cette note. Vous avez le choix, et vous pouvez changer d’avis.
note-foot = Note pour le client. Elle porte sur ce qui a été contrôlé, tel que c’était ce jour-là.

short-head = { $vehicle }, { $date } : { $label }. { $headline }.
short-head-nameless = Votre voiture, { $date } : { $label }. { $headline }.
short-now-danger = Même pas pour rentrer. Ne démarrez pas le moteur. Laissez la voiture ici, ou faites-la transporter sur une dépanneuse.
short-now-warning = Faites transporter la voiture pour réparation, moteur coupé. Elle ne doit pas être remorquée sur ses roues motrices.
short-now-caution = Si le bruit ou les secousses augmentent, arrêtez-vous et appelez-nous.
short-now-notice = Revenez si le bruit revient ou change.
short-now-unrated = Laissez-nous finir le contrôle à la main. D’ici là, nous ne pouvons pas vous dire si vous pouvez rouler.
short-more = La note entière en dit plus : demandez-la-nous.

# Libellés de l'impression
paper-label-for = Pour :
paper-label-against = Contre :
paper-label-photo-missing = La photo est notée, mais son fichier n’a pas pu être lu à l’impression.
paper-label-photo-damaged = La photo est notée, mais son fichier a été endommagé ou changé depuis. Elle n’est pas montrée ici et ne prouve rien tant qu’une bonne copie n’est pas reprise.
paper-label-name = Nom
paper-label-date = Date
paper-label-signature = Signature
paper-label-page = Page { "{page}" } sur { "{pages}" }
