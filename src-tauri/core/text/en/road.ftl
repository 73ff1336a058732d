### Rows of roadworthiness law, for information, both outcomes each, in our own words.
### UK: DVSA, MOT inspection manual: cars and passenger vehicles, section 6 (version 2022-03-02).
### EU: Directive 2014/45/EU, Annex I, with corrigendum OJ L 219, 22.8.2019, p. 25; from memory.

road-bolts = Shaft bolts. UK MOT manual 6.1.7 (a): Major if loose or missing, Dangerous if the shaft is likely to come off. Directive 2014/45/EU, Annex I, 6.1.7 (a): Major if loose or missing, Dangerous if road safety is put at risk. Steady does not choose; your local rules decide.
road-bearing = Shaft bearing. UK MOT manual 6.1.7 (b): Major if excessively worn, Dangerous if likely to break up. Directive 2014/45/EU, Annex I, 6.1.7 (b): Major if worn, Dangerous if it is very likely to come loose or crack. Steady does not choose; your local rules decide.
road-coupling = Joint of the shaft. UK MOT manual 6.1.7 (c): Major if excessively worn, Dangerous if so worn that it is likely to fail. Directive 2014/45/EU, Annex I, 6.1.7 (c): Major if worn, Dangerous if the risk of failure is very high. Steady does not choose; your local rules decide.
road-flexible = Flexible coupling. UK MOT manual 6.1.7 (d): Major if badly deteriorated, Dangerous if likely to fail. Directive 2014/45/EU, Annex I, 6.1.7 (d): Major if deteriorated, Dangerous if the risk of failure is very high. Steady does not choose; your local rules decide.
road-shaft = Shaft. UK MOT manual 6.1.7 (e): Major if bent or badly damaged, with no Dangerous outcome in that row. Directive 2014/45/EU, Annex I, 6.1.7 (e): Major if damaged or bent, with no Dangerous outcome either. Steady does not choose; your local rules decide.
road-housing = Bearing housing. UK MOT manual 6.1.7 (f): Major if fractured or insecure, Dangerous if likely to fail. Directive 2014/45/EU, Annex I, 6.1.7 (f): Major if fractured or insecure, Dangerous if the risk of failure is very high. Steady does not choose; your local rules decide.
road-mount = Engine mount. UK MOT manual 6.1.8: Major if badly damaged with too much movement, Dangerous if fractured, missing or far too loose. Steady does not choose; your local rules decide.
road-source = UK rows: DVSA, MOT inspection manual for cars, version of 2 March 2022. EU rows: Directive 2014/45/EU, Annex I, with the corrigendum of 2019; their wording is from memory.
