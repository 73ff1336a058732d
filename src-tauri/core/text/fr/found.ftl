### Ce qui a été trouvé à la main, ce qui a été adouci, ce qu’une visite d’avant a laissé ouvert, et ce que demande une
### ATTENTION sans panne. Pour l’atelier ; ce qui finit par -owner ou commence par note- ou short- est pour le client.

finding-sum-found = Trouvé : { $findings }.
finding-sum-behind = Derrière, le plus probable : { $causes }.
finding-sum-beside = Probable aussi : { $causes }.
finding-sum-else-none = À part ce qui a été trouvé, aucune cause ne se détache.
made-milder = { $step } : la première réponse était « { $was } », un DANGER ou un AVERTISSEMENT. { $by } l’a changée en « { $now } » ({ $at }). Raison donnée : { $reason }
made-milder-withdrawn = { $step } : la première réponse était « { $was } », un DANGER ou un AVERTISSEMENT. { $by } l’a retirée ({ $at }). Raison donnée : { $reason }
made-milder-again = Elle a été saisie de nouveau et reste valable.
still-open-before = Encore ouvert : cette voiture a été classée { $label } le { $day }. Rien ne montre que c’est réparé, et cette visite ne l’annule pas. Après la réparation, ouvrez une nouvelle visite, « Contrôle après réparation », et vérifiez de nouveau les mêmes endroits, à chaud là où la main cherche du jeu.
still-open-layout = Elle avait alors été contrôlée comme « { $layout } » : vérifiez quelle disposition est la bonne.
still-open-corrected = Cette visite avait d’abord été notée pour cette voiture, puis corrigée en « { $car } » alors que des points étaient déjà contrôlés : regardez de quelle voiture il s’agissait.
still-open-unread = Le dossier de cette visite ne peut pas être lu en entier ; son classement est celui de la liste. Il reste ouvert jusqu’à ce qu’il soit lisible à nouveau : remettez une sauvegarde, ou le fichier de disposition de l’atelier.
note-still-open-danger = Le { $day }, nous avons classé cette voiture { $label }. Nous n’avons pas encore vu si c’est réparé.
note-still-open-warning = Le { $day }, nous avons classé cette voiture { $label }. Nous n’avons pas encore vu si c’est réparé.
before-other-layout = La dernière fois, cette voiture a été notée « { $layout } ». Regardez sous la voiture ce qui est juste.
error-reason-too-short = La raison est trop courte
error-reason-too-short-help = Dites en quelques mots, huit lettres ou plus, pourquoi la réponse est plus douce maintenant. Le constat la montre.
cause-range = { $word }, entre { $low } et { $high }
cause-something-else = Autre chose, qui n’est pas dans cette liste

finding-sum-caution-look = ATTENTION : aucun défaut trouvé encore. Prévoyez plus de temps pour chercher.
finding-next-still-open = Réglez d’abord ce qu’une visite antérieure a laissé ouvert : demandez ce qui a été fait, regardez-le et consignez-le.
finding-next-drive-open = D’ici là, personne ne peut dire si la voiture peut rouler.
note-now-still-open-danger = Ne roulez pas avant de nous avoir demandé. Notre classement antérieur vaut encore.
note-now-still-open-warning = Ne roulez pas avant de nous avoir demandé. Notre classement antérieur vaut encore.
short-now-still-open-danger = Ne roulez pas avant de nous avoir demandé. Notre classement antérieur vaut encore.
short-now-still-open-warning = Ne roulez pas avant de nous avoir demandé. Notre classement antérieur vaut encore.
finding-next-caution-look = Prévoyez plus de temps pour chercher la cause. Ne chiffrez pas encore de réparation : aucun défaut n’a été trouvé.
headline-caution-look = Prendre rendez-vous pour voir de plus près
note-now-caution-look = Prenez rendez-vous pour que nous regardions de plus près. Si le bruit ou les secousses augmentent, arrêtez-vous et appelez-nous.
short-now-caution-look = Prenez rendez-vous pour que nous regardions de plus près. Si le bruit ou les secousses augmentent, arrêtez-vous et appelez-nous.
finding-next-after-repair = Faites l’essai sur route avant de rendre la voiture : même vitesse, même rapport que pour le symptôme signalé.
stop-road-test = À l’atelier, tous les contrôles possibles sont faits. Un essai sur route peut suivre.
next-looks-first = Le jeu n’a pas été contrôlé : regardez ce qui tient le roulement et les supports, puis recommencez.

note-likely-else = À part ce que nous avons trouvé, la cause peut être celle-ci : { $about }
note-in-order = Nous avons contrôlé à la main l’arbre et son roulement, et nous n’y avons rien trouvé d’anormal.
note-in-order-ends = Nous avons contrôlé à la main les deux bouts de l’arbre, et nous n’y avons rien trouvé d’anormal.
note-open-support-look = Nous n’avons pas encore vu le caoutchouc qui tient le roulement.
note-open-which = { $count ->
    [one] C’est : { $steps }.
   *[other] Ce sont : { $steps }.
}

rule-coupling-worn = Un accouplement ou un cardan de l’arbre est usé ou dur.
rule-coupling-worn-owner = Un cardan de l’arbre est usé.
rule-coupling-worn-joint-stiff-owner = Un cardan de l’arbre est dur.
note-could-coupling-worn = Le cardan peut s’user encore, jusqu’à ce que l’arbre tremble ou se détache.
rule-boot-torn = Le soufflet d’un cardan est déchiré : la graisse sort, la saleté entre.
rule-boot-torn-owner = Le soufflet en caoutchouc d’un cardan est déchiré. La graisse sort et la saleté entre.
note-could-boot-torn = Sans graisse, le cardan s’use. À la fin, il peut casser.

rule-cold-check-buzz-rubber = Le palier n’a été contrôlé qu’à froid ou sans noter la température. Un contrôle à froid n’écarte rien : le caoutchouc est dur à froid et cède plus à chaud. Recommencez à chaud.
rule-cold-check-buzz-rubber-owner = Nous avons contrôlé le caoutchouc à froid, et à chaud il cède plus.
unknown-cold-rubber = Bruit ou vibration avec un contrôle à froid : le caoutchouc cède plus à chaud. Recommencez, palier chaud.
note-cold-rubber = Nous avons contrôlé le caoutchouc à froid. À chaud, il cède plus.
note-could-cold-check-buzz-rubber = Si le caoutchouc cède à chaud, l’arbre peut battre et abîmer d’autres pièces.

rule-no-bearing-action-after-repair = Après la réparation : aucun jeu senti, et rien d’autre trouvé. La réparation tient, pour ce qui a été contrôlé.
rule-no-bearing-action-after-repair-owner = Nous avons regardé encore après la réparation. Nous avons cherché du jeu à la main et nous n’avons pas trouvé de défaut.
rule-no-bearing-action-play-not-driven = Non reproduit : la voiture n’a pas roulé sur la route, où cela est signalé. Aucun jeu senti, et rien d’autre trouvé.
rule-no-bearing-action-play-not-driven-owner = Vous le remarquez sur la route, et nous n’y avons pas roulé. Nous avons cherché du jeu à la main et nous n’avons pas trouvé de défaut.
rule-no-bearing-action-ends-not-driven = Non reproduit : la voiture n’a pas roulé sur la route, où cela est signalé. Aucun jeu senti aux bouts de l’arbre, et rien d’autre trouvé.
rule-no-bearing-action-ends-not-driven-owner = Vous le remarquez sur la route, et nous n’y avons pas roulé. Nous avons contrôlé à la main les deux bouts de l’arbre et nous n’y avons pas trouvé de défaut.
unknown-not-driven = Non reproduit : signalé sur la route, et la voiture n’y a pas roulé.
note-not-driven = Vous le remarquez sur la route, et nous n’y avons pas roulé.

## Ce qui a été trouvé, selon la seule réponse derrière.
rule-support-broken-torn-through-owner = L’anneau en caoutchouc qui tient le roulement est déchiré de part en part.
rule-support-broken-bracket-cracked-owner = Le support qui tient le roulement est fissuré.
rule-support-broken-fastener-loose-owner = Une vis qui tient le roulement est desserrée.
rule-housing-broken-cracked-owner = La pièce qui tient le roulement est fissurée.
rule-housing-broken-fastener-loose-owner = Une vis qui tient le roulement est desserrée.
rule-movement-at-support-felt-owner = Nous avons senti à la main que l’arbre bouge à son roulement. Il ne doit pas y bouger du tout.
rule-coupling-bolts-bolt-loose-owner = Une vis qui tient l’arbre est desserrée.
rule-coupling-bolts-bolt-missing-owner = Une vis qui tient l’arbre manque.
rule-support-ageing-crazed-owner = L’anneau en caoutchouc qui tient le roulement est vieux et plein de fines fissures.
rule-support-ageing-oil-soaked-owner = L’anneau en caoutchouc qui tient le roulement est imbibé d’huile.
rule-support-ageing-off-centre-owner = L’anneau en caoutchouc qui tient le roulement pend ou n’est plus à sa place.
rule-rubber-play-knocks-owner = Le roulement bouge dans son anneau en caoutchouc et va en butée.
rule-rubber-play-beyond-figure-owner = Le roulement bouge dans son anneau en caoutchouc plus que le constructeur ne permet.
rule-turns-badly-rough-owner = L’arbre accroche quand on le tourne à la main.
rule-turns-badly-resists-owner = L’arbre est dur à tourner à la main.

## Selon le montage.
drawing-rigid-output-speed = Où est le roulement : l’arbre passe sous le plancher en deux parties, de la boîte à l’essieu arrière. Entre elles, son roulement est dans un palier en métal.
drawing-two-centres = Où sont les roulements : l’arbre passe sous le plancher en trois parties. Entre elles, deux roulements sont dans des anneaux en caoutchouc.
drawing-half-shaft = Où est le roulement : l’arbre va en travers de la voiture, de la boîte à une roue avant. Près du moteur, son roulement est dans un support en métal.
drawing-front-shaft = Un arbre va du milieu de la voiture à l’essieu avant, avec un cardan à chaque bout et aucun roulement entre eux.
drawing-one-piece = Un arbre passe sous le plancher de la boîte à l’essieu arrière, avec un cardan à chaque bout et aucun roulement entre eux.

## Sur un tube.
step-shaft-look-do-tube = Seulement tube ouvert. Fermé, personne ne voit l’arbre : répondez « Pas pu le voir ».
step-turn-by-hand-do-tube = Seulement tube ouvert et arbre en main. Fermé, répondez « Pas fait ». Sinon, un tour complet, lentement, et sentez s’il accroche ou freine.

## What stays open, in a headline, and joints that decide.
headline-caution-open = Défaut trouvé ; le contrôle à la main reste ouvert
finding-sum-caution-open = ATTENTION : quelque chose a été trouvé, et le contrôle qui décide reste ouvert.
headline-still-open-danger = Un DANGER antérieur n’est pas réglé
headline-still-open-warning = Un AVERTISSEMENT antérieur n’est pas réglé
finding-sum-still-open-danger = Un DANGER antérieur n’est pas réglé : jusque-là, rien ici ne déclare cette voiture bonne.
finding-sum-still-open-warning = Un AVERTISSEMENT antérieur n’est pas réglé : jusque-là, rien ici ne déclare cette voiture bonne.
note-open-coupling-look = Nous n’avons pas regardé les cardans de l’arbre.
limit-coupling-look = Les cardans et leurs vis n’ont pas été regardés, ou pas entièrement.
limit-coupling-look-owner = Nous n’avons pas vu tous les cardans de l’arbre.
note-could-turns-badly-none = Un cardan peut chauffer et casser. Alors l’arbre peut se détacher.
next-left-out = Laissé de côté jusqu’ici : regardez avant de rendre la voiture.
note-changed = Une réponse a été changée pendant le contrôle : elle annonçait d’abord plus de danger. Demandez-nous pourquoi.
rule-sagging-touches = Le support en caoutchouc s’affaisse et quelque chose touche : sans doute l’arbre lui-même. Cherchez-y des traces de frottement.
rule-sagging-touches-owner = Le caoutchouc qui tient l’arbre s’affaisse, et quelque chose touche.
note-could-sagging-touches = L’arbre peut frotter, s’abîmer et se détacher en route.
rule-play-unsure-none = Les deux bouts de l’arbre ont été contrôlés, et un mouvement n’a pas pu être exclu. Recommencez aux deux avec une deuxième personne qui regarde le cardan.
rule-play-unsure-none-owner = Nous avons cherché du jeu aux deux bouts de l’arbre et nous ne sommes pas sûrs.
note-could-play-unsure-none = Si un cardan a du jeu, l’arbre peut se détacher en route.
note-could-unrated-none = Nous ne pouvons pas encore le dire. Si un cardan a du jeu, l’arbre peut se détacher en route.
finding-next-again-owner = Donnez la note au client. Ne chiffrez rien avant un nouveau contrôle à la main.
rule-cold-check-buzz-repaired = Après une réparation, et contrôlé à froid ou sans température : un contrôle à froid n’écarte rien. Recommencez à chaud avant de dire que la réparation tient.
rule-cold-check-buzz-repaired-owner = La voiture a été réparée, et nous l’avons contrôlée à froid. Seul un contrôle à chaud dira si la réparation tient.
next-whose-roughness = Désaccouplez l’arbre et tournez-le seul : cela montre si la rugosité est la sienne.
finding-elsewhere = Ne compte pas : { $answers }. La voiture était alors inscrite avec une autre disposition ou une autre cote. À contrôler de nouveau.
rule-set-apart = Quelque chose a été trouvé alors que cette voiture était inscrite avec une autre disposition ou une autre cote, et n’est ni contrôlé de nouveau ni retiré. À régler d’abord.
rule-set-apart-owner = Nous avons trouvé sur cette voiture quelque chose qui n’est pas encore réglé.
note-could-set-apart = Si c’est au roulement, l’arbre peut se détacher en route.
