//! What an owner says in words of their own is read as the sounds that the trade tells apart, in every language.

use steady_core::model::visit::Intake;
use steady_core::trade::load;
use steady_core::walk::order::complaint_sounds;
use steady_core::words::Words;

/// What a screen calls a sound, an owner may write: it is read as that sound, and as no other.
#[test]
fn each_sound_is_read_in_the_words_of_every_language() {
    let trade = load(&[]).unwrap().0;
    let read = |complaint: &str| {
        complaint_sounds(&trade, &Intake { complaint: complaint.to_owned(), ..Intake::default() })
    };
    for tag in Words::locales() {
        let words = Words::of(tag).unwrap();
        for sound in &trade.sounds {
            let called = words.text(&format!("sound-{}", sound.id));
            assert_eq!(read(&called), [sound.id.as_str()], "{tag}: {called}");
        }
    }
    for (complaint, sound) in [
        ("Das Auto rüttelt ab 90", "vibration"),
        ("Es dröhnt unter dem Boden", "buzz"),
        ("El coche tiembla en autopista", "vibration"),
        ("La voiture vibre et rien d'autre", "vibration"),
        ("יש רעידות בכביש", "vibration"),
        ("שומעים משהו כשהרכב עומד, וברעידה הזאת אי אפשר לנסוע", "vibration"),
        ("והדפיקות מתחת לרצפה", "knock"),
        ("המנוע מקרקש", "rattle"),
        // A dry bearing squeals or grates.
        ("It squeaks from 30 on", "whine"),
        ("a grating noise", "whine"),
        ("Es quietscht unter dem Boden", "whine"),
        ("chirría al rodar", "whine"),
        ("La voiture grince", "whine"),
        ("יש חריקה בנסיעה", "whine"),
        // A joint in a bend, not the exhaust: what pops is known to come from elsewhere.
        ("It clicks in tight bends", "knock"),
        ("Es knackt beim Anfahren", "knock"),
        ("Chasquidos al girar", "knock"),
        ("Des claquements en virage", "knock"),
        ("Es patscht im Auspuff", "pops"),
    ] {
        assert_eq!(read(complaint), [sound], "{complaint}");
    }
    assert_eq!(read("a popping noise when it turns"), ["knock", "pops"], "it may be either");
    assert_eq!(read("החליפו את המיסב והמיזוג לא עובד"), Vec::<String>::new());
}
