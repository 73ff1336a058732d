//! Fills the machinist's sheet from where a visit and its bench stand.

use fluent_bundle::FluentValue;

use crate::model::bench::BenchStand;
use crate::model::bore::{SkimAxis, SkimPlan};
use crate::model::fit::{FitResult, SeatFit, SeatId, SizeFrom, SizeStand};
use crate::model::standing::Standing;
use crate::model::verdict::Verdict;
use crate::model::workshop::Workshop;
use crate::words::Words;

use super::finding_lines::{foot, vehicle};
use super::fit_lines::joining_lines;
use super::machinist::{MachinistSheet, PassLine, SectionDrawing, SizeLine, VisitCode};
use super::parts::{labels, letterhead};

/// Most passes that are listed one by one, so that the sheet stays one page.
const PASSES: usize = 6;
/// Letter of the datum axis, as ISO 1101 has it.
const DATUM: &str = "A";

/// What the machinist's sheet says, `code` the modules of the visit's code. The same ledger, workshop and words give the
/// same sheet.
pub fn build_machinist(
    standing: &Standing,
    bench: &BenchStand,
    workshop: &Workshop,
    code: Vec<String>,
    words: &Words,
) -> MachinistSheet {
    let say = |id: &str| words.text(&format!("repair-sheet-{id}"));
    let column = |id: &str| say(&format!("column-{id}"));
    let sheet = Sheet { bench, words };
    MachinistSheet {
        locale: words.locale().to_owned(),
        title: say("title"),
        workshop: letterhead(workshop, words),
        identity: vehicle(standing, words),
        verdict: bench.verdict_lines.clone(),
        section: SectionDrawing {
            alt: say("section-alt"),
            caption: say("section-caption"),
            sleeve: sheet.sleeve().is_some(),
            datum: DATUM.to_owned(),
        },
        sizes_heading: say("heading-sizes"),
        size_columns: ["mark", "what", "size", "how", "measured"].map(column),
        sizes: sheet.sizes(),
        passes_heading: say("heading-passes"),
        pass_columns: ["pass", "cut", "diameter", "touched", "wall", "measured"].map(column),
        passes: sheet.plan().map(|plan| sheet.passes(plan)).unwrap_or_default(),
        stop_heading: say("heading-stop"),
        stop: sheet.stop(),
        joining_heading: say("heading-joining"),
        joining: bench
            .fit
            .as_ref()
            .map_or_else(|| vec![say("joining-open")], |fit| joining_lines(words, fit)),
        cautions_heading: words.text("finding-heading-cautions"),
        cautions: ["gates", "clamp", "heat", "maker"].map(|id| say(&format!("caution-{id}"))).into(),
        code: VisitCode { alt: say("code-alt"), caption: say("code-caption"), rows: code },
        foot: foot(standing, words),
        page_foot: words.with("repair-sheet-foot", &[("visit", standing.visit.as_str().into())]),
        labels: labels(words),
    }
}

/// The bench in the words of the sheet.
struct Sheet<'a> {
    bench: &'a BenchStand,
    words: &'a Words,
}

impl Sheet<'_> {
    fn fit(&self) -> Option<&FitResult> {
        self.bench.fit.as_ref()
    }

    fn seat(&self, which: impl Fn(SeatId) -> bool) -> Option<&SeatFit> {
        self.fit()?.seats.iter().find(|seat| which(seat.seat))
    }

    fn sleeve(&self) -> Option<&SeatFit> {
        self.seat(|seat| seat == SeatId::SleeveInHousing)
    }

    /// The plan, unless the housing is scrap or its seat stays as it is: then nothing is to be cut.
    fn plan(&self) -> Option<&SkimPlan> {
        let scrap = self.bench.verdict.at_least == Verdict::ReplaceHousing;
        let sound = self.bench.verdict.verdict == Some(Verdict::BearingsOnly);
        self.bench.plan.as_ref().filter(|_| !scrap && !sound)
    }

    fn text(&self, id: &str) -> String {
        self.words.text(&format!("repair-sheet-{id}"))
    }

    fn with(&self, id: &str, args: &[(&str, FluentValue<'_>)]) -> String {
        self.words.with(&format!("repair-sheet-{id}"), args)
    }

    fn measured(&self, mm: f64) -> FluentValue<'static> {
        self.words.measured(mm).into()
    }

    fn range(&self, size: &SizeStand) -> String {
        self.with("range", &[("least", self.measured(size.least_mm)), ("most", self.measured(size.most_mm))])
    }

    fn line(&self, mark: &str, id: &str, target: Option<String>) -> SizeLine {
        SizeLine {
            mark: mark.to_owned(),
            what: self.text(&format!("size-{id}")),
            open: target.is_none(),
            target: target.unwrap_or_else(|| self.text("open")),
            how: self.text(&format!("how-{id}")),
        }
    }

    fn sizes(&self) -> Vec<SizeLine> {
        let found = self.bench.found.as_ref().and_then(|bore| bore.shape.mean_diameter).map(|size| {
            let expanded = self.words.fine(size.expanded_um).into();
            self.with("found", &[("size", self.measured(size.value_mm)), ("expanded", expanded)])
        });
        let mut lines = vec![self.line(DATUM, "axis", self.axis()), self.line("1", "found", found)];
        if let Some(sleeve) = self.sleeve() {
            lines.push(self.line("2", "housing", Some(self.range(&sleeve.hole))));
            lines.push(self.line("3", "sleeve", Some(self.range(&sleeve.part))));
        } else {
            let clean = self.plan().and_then(|plan| plan.clean_diameter);
            let clean = clean.map(|size| {
                self.with("from", &[("least", self.measured(size.value_mm + size.expanded_um / 1000.0))])
            });
            lines.push(self.line("2", "clean", clean));
        }
        let seat = self.seat(|seat| seat != SeatId::SleeveInHousing);
        lines.extend(self.fit().and_then(|fit| fit.sleeve.as_ref()).map(|sleeve| {
            let bored = sleeve.bored_before_mm.map(|[least, most]| {
                self.with("range", &[("least", self.measured(least)), ("most", self.measured(most))])
            });
            self.line("4", "bored", Some(bored.unwrap_or_else(|| self.text("bored-after"))))
        }));
        // What a seat measures now is no size to work to, unless it stays as it is.
        let stays = self.bench.verdict.verdict == Some(Verdict::BearingsOnly);
        let seat = seat.filter(|seat| stays || seat.hole.from != SizeFrom::Measured);
        lines.push(self.line("4", "seat", seat.map(|seat| self.range(&seat.hole))));
        lines.push(self.line("5", "wall", self.wall()));
        let form = self.fit().map(|fit| {
            let most: FluentValue<'_> = self.words.fine(fit.form_um).into();
            self.with("at-most", &[("most", most)])
        });
        lines.push(self.line("6", "form", form));
        lines
    }

    fn axis(&self) -> Option<String> {
        let plan = self.bench.plan.as_ref()?;
        Some(match (plan.axis, plan.shift_um) {
            (SkimAxis::Datum, _) => self.text("axis-datum"),
            (SkimAxis::Free, Some(shift)) => {
                self.with("axis-beside", &[("shift", self.words.fine(shift).into())])
            }
            (SkimAxis::Free, None) => self.text("axis-free"),
        })
    }

    /// The wall that has to stay, and what the sleeve leaves of the one that was measured.
    fn wall(&self) -> Option<String> {
        let least = self.bench.look.wall_least_mm?;
        let left = self.bench.plan.as_ref().and_then(|plan| plan.sleeve).and_then(|cut| cut.wall_left_mm);
        Some(match left {
            Some(left) => {
                let args = [("least", self.measured(least)), ("left", self.measured(left))];
                self.with("wall-and-left", &args)
            }
            None => self.with("at-least", &[("least", self.measured(least))]),
        })
    }

    fn passes(&self, plan: &SkimPlan) -> Vec<PassLine> {
        let last = plan.last_safe_pass;
        let shown =
            plan.passes.iter().take_while(|pass| last.is_none_or(|last| pass.number <= last)).take(PASSES);
        let mut lines: Vec<PassLine> = shown
            .map(|pass| PassLine {
                pass: self.words.number(pass.number as f64),
                cut: self.words.measured(2.0 * pass.cut_um / 1000.0),
                diameter: pass.diameter_mm.map(|mm| self.words.measured(mm)).unwrap_or_default(),
                touched: self.touched(plan, pass.touched_share, pass.clean),
                wall: pass.wall_left_mm.map(|mm| self.words.measured(mm)).unwrap_or_default(),
                stop: last == Some(pass.number),
            })
            .collect();
        let stops = lines.last().is_some_and(|line| line.stop);
        lines.extend(plan.sleeve.filter(|_| !stops).map(|cut| PassLine {
            pass: self.text("pass-sleeve"),
            cut: self.words.measured(2.0 * cut.cut_mm),
            diameter: self.words.measured(cut.bore_mm),
            touched: self.text(if cut.cleans_up && !plan.at_least {
                "touched-all"
            } else {
                "touched-unsure"
            }),
            wall: cut.wall_left_mm.map(|mm| self.words.measured(mm)).unwrap_or_default(),
            stop: true,
        }));
        lines
    }

    /// Nothing is said to be touched all round where a part was not read.
    fn touched(&self, plan: &SkimPlan, share: f64, clean: bool) -> String {
        if clean && !plan.at_least { self.text("touched-all") } else { self.words.percent(share) }
    }

    fn stop(&self) -> Vec<String> {
        let verdict = &self.bench.verdict;
        if verdict.at_least == Verdict::ReplaceHousing {
            return vec![self.text("stop-scrap")];
        }
        if verdict.verdict == Some(Verdict::BearingsOnly) {
            return vec![self.text("stop-sound")];
        }
        let Some(plan) = self.plan() else { return vec![self.text("stop-no-plan")] };
        let mut lines = Vec::new();
        if verdict.verdict.is_none() {
            lines.push(self.text("stop-verdict-open"));
        }
        lines.push(match plan.last_safe_pass {
            _ if self.wall().is_none() => self.text("stop-no-wall"),
            None => self.text("stop-no-wall"),
            Some(0) => self.text("stop-none-safe"),
            // The feed counts on the diameter.
            Some(last) => {
                let cut = self.measured(last as f64 * plan.pass_diameter_mm);
                self.with("stop-cut", &[("cut", cut)])
            }
        });
        let more = plan.passes_to_allow.max(plan.passes_needed);
        if more > PASSES {
            lines.push(self.with("stop-more", &[("pass", more.into())]));
        }
        lines.push(self.text("stop-clean"));
        lines.push(self.text("stop-crack"));
        lines
    }
}
