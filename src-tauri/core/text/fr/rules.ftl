### Raisons d'un classement : rule-ID pour l'atelier, rule-ID-owner pour le client, qui ne connaît peut-être pas les pièces.

rule-movement-at-support = Mouvement là où aucun n’est permis, senti à la main ou prouvé au comparateur : l’arbre bouge à son roulement.
rule-movement-at-support-owner = Nous avons senti ou mesuré que l’arbre bouge à son roulement. Il ne doit pas y bouger du tout.
rule-housing-broken = Le palier du roulement est fissuré, ou une de ses vis est desserrée.
rule-housing-broken-owner = La pièce qui tient le roulement est fissurée, ou une de ses vis est desserrée.
rule-coupling-failing = Un accouplement de l’arbre est près de casser.
rule-coupling-failing-owner = Un cardan de l’arbre est près de casser.
rule-shaft-fibre-damaged = La fibre de l’arbre est abîmée.
rule-shaft-fibre-damaged-owner = L’arbre est en fibre, et la fibre est abîmée. Il peut casser sans prévenir.
rule-running-stopped = Il a fallu arrêter le moteur à cause d’un fort cognement ou d’une forte vibration.
rule-running-stopped-owner = Nous avons dû couper le moteur à cause d’un fort cognement ou de fortes secousses.

rule-rubber-play = Le palier en caoutchouc arrive en butée ou cède plus que le constructeur ne permet, ou un mouvement a été senti.
rule-rubber-play-owner = Le roulement bouge dans son anneau de caoutchouc. Il bouge plus que permis, ou nous ne savons pas ce qui est permis.
rule-turns-badly = À la main, l’arbre accroche ou résiste.
rule-turns-badly-owner = L’arbre ne tourne pas librement à la main.
rule-shaft-damaged = L’arbre est cabossé, ou une masse d’équilibrage est absente.
rule-shaft-damaged-owner = L’arbre est cabossé, ou il a perdu une petite masse qui le fait tourner rond.
rule-far-end-play = Un mouvement en travers, ou un choc, a été senti au bout de l’arbre.
rule-far-end-play-owner = L’arbre a du jeu à son bout.
rule-play-unsure = Un mouvement au palier n’a pas pu être exclu : le contrôle a été fait et reste incertain.
rule-play-unsure-owner = Nous avons cherché du jeu au roulement. Nous ne pouvons pas dire qu’il n’y en a pas.
rule-bearing-likely = Au roulement, quelque chose a été senti, vu ou laissé incertain, et les signes à eux seuls rendent un défaut du roulement probable à 50 % au moins.
rule-bearing-likely-owner = Ce que nous avons trouvé fait penser au roulement.

rule-cause-likely = Probable à 50 % au moins : { $cause }.
rule-cause-likely-owner = Voici ce qui peut en être la cause : { $about }
rule-cause-likely-misfire = Probable à 50 % au moins : { $cause }. Le carburant non brûlé peut surchauffer et détruire le catalyseur.
rule-cause-likely-misfire-owner = Voici ce qui peut en être la cause : { $about } Cela peut détruire une pièce chère de l’échappement.
rule-finding-unexplained = On a entendu, senti ou vu quelque chose qu’aucune autre raison n’explique. Regardez de plus près avant de rendre la voiture.
rule-finding-unexplained-owner = Il y a quelque chose, dit par vous ou vu par nous, qu’il faut voir de plus près.
rule-cold-check-buzz = Aucun mouvement n’a été senti, mais à froid ou sans noter la température. Un contrôle à froid n’écarte rien : un logement peut se desserrer à chaud. Recommencez à chaud.
rule-cold-check-buzz-owner = Nous avons cherché du jeu à froid, mais la pièce peut être desserrée à chaud.

rule-no-bearing-action = Les deux contrôles du jeu sont bons, l’arbre tourne sans accroc, et rien d’autre n’a été trouvé.
rule-no-bearing-action-owner = Nous avons contrôlé le roulement à la main, et nous n’y avons pas trouvé de défaut.
rule-no-bearing-action-not-reproduced = Non reproduit : rien n’a été entendu, les deux contrôles du jeu sont bons et l’arbre tourne sans accroc.
rule-no-bearing-action-not-reproduced-owner = Le bruit n’a pas été reproduit : il n’est pas venu pendant que nous avions la voiture. Nous avons contrôlé le roulement à la main, et nous n’y avons pas trouvé de défaut.
rule-no-bearing-action-not-listened = Non reproduit : aucun contrôle moteur tournant n’a été fait. Les deux contrôles du jeu sont bons et l’arbre tourne sans accroc.
rule-no-bearing-action-not-listened-owner = Le bruit n’a pas été reproduit : nous n’avons pas lancé le moteur pour écouter. Nous avons contrôlé le roulement à la main, et nous n’y avons pas trouvé de défaut.
