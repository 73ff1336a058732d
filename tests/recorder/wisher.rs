//! Opens a visit, says that a photo is about to be taken, prints both names once the reply is there, and
//! waits to be killed, as a phone does with an app whose camera is open. Arguments: data folder.

#![expect(clippy::unwrap_used, clippy::print_stdout, reason = "a test tool may fail loudly")]

mod quiet;

use std::io::Write;
use std::time::Duration;

use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::model::visit::{Intake, Vehicle};

const WISH: &str = "0191d2f0-0000-7000-8000-00000000aaaa";

fn main() {
    let folder = std::env::args().nth(1).unwrap();
    let steady = quiet::open(folder.into());
    steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
    let vehicle = Vehicle { layout: "rigid-engine-speed".to_owned(), ..Vehicle::default() };
    let intake = Intake { vehicle, ..Intake::default() };
    let Response::Visit(standing) = steady.handle(Request::Open { intake }).unwrap() else {
        panic!("no standing")
    };
    let visit = standing.visit.clone();
    let (step, wish) = ("housing-look".to_owned(), WISH.to_owned());
    steady.handle(Request::WantPhoto { visit: visit.clone(), step, wish }).unwrap();
    println!("{visit} {WISH}");
    std::io::stdout().flush().unwrap();
    std::thread::sleep(Duration::from_secs(600));
}
