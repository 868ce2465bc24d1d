//! What the cautions rest on: the body that says so, and when.

use benchslate_core::{
    journal::{
        Change, Id, Journal, On, Pen, Shop,
        cautions::{Caution, of_item, of_mark},
        kinds::{Item, Mark, Use},
    },
    measure::{Day, Unit, Zone},
};

/// The codes of the treatments, as the standard prints them in the mark, and what each asks to be minded.
///
/// DIFFERENCE: the standard is about pests only; what methyl bromide and sulphuryl fluoride mean for furniture is common
/// practice of those who reuse pallets.
// Source: from memory — ISPM 15 (IPPC, FAO), as adopted in 2018 and published in 2019, annex 1: HT heat, DH dielectric heating, MB methyl bromide, SF sulphuryl fluoride; annex 2, the mark.
#[test]
fn treatment_codes_of_wood_packaging() {
    let codes = [
        ("ht", Mark::Ht, Caution::TreatedForPests),
        ("dh", Mark::Dh, Caution::TreatedForPests),
        ("mb", Mark::Mb, Caution::UnknownTreatment),
        ("sf", Mark::Sf, Caution::Fumigated),
    ];
    for (code, mark, caution) in codes {
        assert_eq!(of_mark(Some(mark)), caution, "{code}");
    }
    // Unmarked wood may be untreated or treated with anything.
    assert_eq!(of_mark(None), of_mark(Some(Mark::None)));
}

/// What the program says, word for word.
const SAID: &str = include_str!("../../app/web/src/words/cautions.rs");

fn consumable(name: &str) -> Vec<Caution> {
    let on = On::Day(Day::parse("2026-11-20").expect("a day"));
    let item = Item::named(on, name, Use::Consumable, Unit::Each);
    let mut journal = Journal::default();
    let id = Id::of([7; 16]);
    let pen = Pen { device: id, now_ms: 1_795_000_000_000 };
    let change = Change::write(id, item);
    for line in pen.write(&journal, &[change], &mut || id) {
        journal.add(&line.text).expect("reads");
    }
    let shop = Shop::fold(&journal, &Zone::utc());
    of_item(shop.item(id).expect("an item"))
}

// Source: published — IARC Monographs, volume 62 (1995), wood dust: carcinogenic to humans (group 1); kept in volume 100 C (2012).
#[test]
fn wood_dust_is_said_to_cause_cancer() {
    assert_eq!(consumable("Sanding discs, 120 grit"), [Caution::SandingDust]);
    assert!(SAID.contains("wood dust can cause cancer"));
}

// Source: from memory — limits for wood dust at work are set by country (inhalable hardwood dust in the EU: 2 mg/m³ since 2023; others differ): no figure is printed.
#[test]
fn no_limit_is_printed_for_wood_dust() {
    assert!(SAID.contains("limits differ by country"));
    assert!(!SAID.contains("mg/m"));
}

// Source: common practice — fire services, of rags with linseed and other drying oils: hang or spread to dry outdoors, or soak in water; kept in a lidded metal container.
#[test]
fn rags_of_drying_oils_are_spread_or_put_under_water() {
    for name in ["Boiled linseed oil", "Tung oil", "Danish oil", "Spar varnish"] {
        assert_eq!(consumable(name), [Caution::OilyRags], "{name}");
    }
    // Mineral oils don't dry, and don't heat up by themselves.
    assert_eq!(consumable("Machine oil"), []);
    assert!(SAID.contains("flat outdoors, or put them under water in a lidded metal tin"));
}
