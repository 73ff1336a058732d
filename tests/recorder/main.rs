//! Records answers as fast as it can and prints each entry's hash once the reply says it is on disk.
//! The kill test starts it and kills it. Arguments: data folder.

#![expect(clippy::unwrap_used, clippy::print_stdout, reason = "a test tool may fail loudly")]

mod quiet;

use std::io::Write;

use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::model::answer::AnswerValue;
use steady_core::model::visit::{Intake, Vehicle};

fn main() {
    let folder = std::env::args().nth(1).unwrap();
    let steady = quiet::open(folder.into());
    steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
    let vehicle = Vehicle { layout: "torque-tube".to_owned(), ..Vehicle::default() };
    let mut reply = steady.handle(Request::Open { intake: Intake { vehicle, ..Intake::default() } }).unwrap();
    for turn in 0.. {
        let Response::Visit(standing) = reply else { panic!("no standing") };
        println!("{} {}", standing.visit, standing.ledger.head);
        std::io::stdout().flush().unwrap();
        let value = AnswerValue::One(if turn % 2 == 0 { "none" } else { "grows-with-speed" }.to_owned());
        reply = steady
            .handle(Request::Answer {
                visit: standing.visit.clone(),
                step: "road-speed-vibration".to_owned(),
                value,
                temperature: None,
                free: None,
                engine: None,
                heard_at: None,
                reason: None,
            })
            .unwrap();
    }
}
