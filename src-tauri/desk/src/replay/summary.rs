//! The report of a replay in a few lines for a person; `--json` prints the whole of it instead.

use std::fmt::Write as _;

use serde_json::Value;
use steady_core::words::Words;

/// How many causes a person wants to see.
const CAUSES: usize = 3;

/// The summary, without a last line end.
pub fn of(report: &Value) -> String {
    let mut text = String::new();
    let _ = writeln!(text, "Visit       {}", word_at(report, "/visit"));
    let _ = writeln!(text, "Urgency     {}", urgency(report));
    for reason in list_at(report, "/urgency/reasons") {
        let _ = writeln!(text, "            {}", word_at(reason, "/text"));
    }
    let missing: Vec<&str> = list_at(report, "/urgency/missing").iter().filter_map(Value::as_str).collect();
    if !missing.is_empty() {
        let _ = writeln!(text, "Missing     {}", missing.join(", "));
    }
    for cause in list_at(report, "/causes").iter().take(CAUSES) {
        let probability = cause.pointer("/probability").and_then(Value::as_f64).unwrap_or_default();
        let _ = writeln!(text, "Cause       {} {}", word_at(cause, "/id"), percent(probability));
    }
    if let Some(step) = report.pointer("/next_check/step").and_then(Value::as_str) {
        let _ = writeln!(text, "Next check  {step}");
    }
    for gauge in list_at(report, "/gauges") {
        let _ = writeln!(text, "Gauge       {} {}", word_at(gauge, "/step"), word_at(gauge, "/decision"));
    }
    if let Some(verdict) = list_at(report, "/bench/lines").first().and_then(Value::as_str) {
        let _ = writeln!(text, "Bench       {verdict}");
    }
    let causes: Vec<&str> = list_at(report, "/outcome/causes").iter().filter_map(Value::as_str).collect();
    if !causes.is_empty() {
        let _ = writeln!(text, "Outcome     {}", causes.join(", "));
    }
    for paper in list_at(report, "/papers") {
        let _ = writeln!(text, "Paper       {}", paper.as_str().unwrap_or_default());
    }
    let entries = report.pointer("/ledger/entries").and_then(Value::as_u64).unwrap_or_default();
    let _ = write!(text, "Record      {entries} entries");
    text
}

/// As the screens say it, never as certain.
fn percent(probability: f64) -> String {
    Words::of("en").map_or_else(|_| format!("{probability:.2}"), |words| words.percent(probability))
}

/// No rating never reads as safe.
fn urgency(report: &Value) -> String {
    let word = report.pointer("/urgency/word").and_then(Value::as_str).unwrap_or("NOT YET CHECKED");
    let do_not_drive = report.pointer("/urgency/do_not_drive").and_then(Value::as_bool).unwrap_or_default();
    if do_not_drive { format!("{word}, do not drive") } else { word.to_owned() }
}

fn word_at<'a>(value: &'a Value, place: &str) -> &'a str {
    value.pointer(place).and_then(Value::as_str).unwrap_or_default()
}

fn list_at<'a>(value: &'a Value, place: &str) -> &'a [Value] {
    value.pointer(place).and_then(Value::as_array).map_or(&[], Vec::as_slice)
}

#[cfg(test)]
mod tests {
    use super::of;
    use serde_json::json;

    #[test]
    fn a_rating_is_said_with_its_reasons() {
        let text = of(&json!({
            "visit": "v", "urgency": {"word": "DANGER", "do_not_drive": true, "missing": [],
                "reasons": [{"rule": "r", "text": "Movement felt."}]},
            "causes": [{"id": "loose-seat", "probability": 0.987}], "next_check": null,
            "papers": ["o/note.pdf"], "ledger": {"entries": 21},
        }));
        assert!(text.contains("DANGER, do not drive\n            Movement felt.\n"), "{text}");
        assert!(text.contains("loose-seat 99%"), "{text}");
        let certain = of(&json!({"causes": [{"id": "loose-seat", "probability": 1.0}]}));
        assert!(certain.contains("loose-seat over 99%"), "{certain}");
        assert!(text.contains("o/note.pdf") && text.ends_with("21 entries"), "{text}");
        assert!(!text.contains("Missing") && !text.contains("Next check"), "{text}");
    }

    #[test]
    fn gauge_bench_and_outcome_have_their_lines() {
        let text = of(&json!({"gauges": [{"step": "play-vertical", "decision": "proven"}],
            "bench": {"lines": ["Skim the seat."]}, "outcome": {"causes": ["loose-seat"]}}));
        assert!(text.contains("Gauge       play-vertical proven\n"), "{text}");
        assert!(text.contains("Bench       Skim the seat.\nOutcome     loose-seat\n"), "{text}");
    }

    #[test]
    fn no_rating_reads_not_yet_checked() {
        let text = of(&json!({"urgency": {"word": null, "do_not_drive": null, "missing": ["play-vertical"]},
            "next_check": {"step": "play-vertical"}}));
        assert!(text.contains("NOT YET CHECKED\n"), "{text}");
        assert!(text.contains("Missing     play-vertical\n"), "{text}");
        assert!(text.contains("Next check  play-vertical\n"), "{text}");
    }
}
