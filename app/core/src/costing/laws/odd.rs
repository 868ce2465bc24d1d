//! Odd data: numbers at the edge, references that go nowhere or in circles, dates in other centuries.

mod running;

use super::{adds_up, everything};
use crate::{
    costing::{
        Books, BuildCost, LotBook,
        salvage::{self, Pile},
    },
    fixture::numbered,
    journal::{
        Body, Change, Id, Journal, On, Pen, Shop,
        kinds::{self, Basis, Bearer, Link, Origin, ShelfState, Source, Span, Use},
        stages::standing_id,
    },
    measure::{Day, Dec, Instant, Offset, Quantity, Unit, When, Zone},
};
use proptest::prelude::*;
use running::{running, setting, side, spans};

/// An entry of a handful, so that references meet, and meet the wrong kind.
fn entry() -> impl Strategy<Value = Id> {
    (0..12_u64).prop_map(|number| numbered(1, number))
}

fn number() -> impl Strategy<Value = Dec> {
    const EDGES: [&str; 8] = [
        "0",
        "-1",
        "0.000001",
        "0.0000001",
        "1000000000000",
        "-1000000000000",
        "9999999999999999",
        "0.333333",
    ];
    prop_oneof![
        prop::sample::select(&EDGES[..]).prop_map(|text| Dec::parse(text).unwrap()),
        (-500_000_i64..5_000_000).prop_map(|number| Dec(rust_decimal::Decimal::new(number, 3))),
    ]
}

fn maybe() -> impl Strategy<Value = Option<Dec>> {
    prop::option::of(number())
}

fn on() -> impl Strategy<Value = On> {
    let day = prop_oneof![Just("1900-01-01"), Just("2200-12-31"), Just("2026-02-10"), Just("2026-02-11")];
    prop_oneof![day.prop_map(|day| On::Day(Day::parse(day).unwrap())), moment().prop_map(On::At)]
}

fn moment() -> impl Strategy<Value = When> {
    prop_oneof![
        Just(1_770_000_000_i64),
        1_769_000_000_i64..1_771_000_000,
        Just(-2_000_000_000),
        Just(7_000_000_000)
    ]
    .prop_map(|at| When { instant: Instant(at), offset: Offset(0) })
}

fn bearer() -> impl Strategy<Value = Bearer> {
    prop_oneof![entry().prop_map(Bearer::Build), entry().prop_map(Bearer::Lot), Just(Bearer::Shop)]
}

fn source() -> impl Strategy<Value = Source> {
    prop_oneof![entry().prop_map(Source::Lot), entry().prop_map(Source::Item)]
}

fn unit() -> impl Strategy<Value = Unit> {
    prop::sample::select(&[Unit::Each, Unit::BoardFoot, Unit::Tin, Unit::Millilitre][..])
}

fn lot() -> impl Strategy<Value = Body> {
    let money = (maybe(), maybe(), maybe(), maybe(), any::<bool>());
    let of = (prop::option::of(entry()), prop::option::of(entry()), maybe(), number(), unit());
    let till = (prop::option::of(entry()), maybe(), maybe());
    let sort = (0..4_u8, any::<bool>(), maybe());
    let new = prop::option::of((number(), maybe(), maybe(), maybe(), any::<bool>()));
    (on(), money, of, (sort, till), new).prop_map(|(on, money, of, (sort, till), new)| {
        let (origin, nominal, other_measure) = sort;
        let (receipt, value, freight) = till;
        let basis = |nominal| if nominal { Basis::Nominal } else { Basis::Actual };
        let (paid, fee, discount, tax, tax_back) = money;
        let (item, for_build, expected_yield, rough, unit) = of;
        let origin =
            [Origin::Salvaged, Origin::Bought, Origin::Supplied, Origin::Offcut][usize::from(origin)];
        let new = new.map(|(price, waste, tax, delivery, nominal)| kinds::NewStock {
            price,
            waste,
            tax,
            delivery,
            basis: Some(basis(nominal)),
            seen: None,
            on: Day::parse("2026-02-10").unwrap(),
        });
        kinds::Lot {
            on,
            item,
            name: String::new(),
            purpose: Use::Timber,
            origin,
            rough,
            unit,
            basis: Some(basis(nominal)),
            other_measure,
            paid,
            fee,
            freight,
            discount,
            tax,
            tax_back,
            for_build,
            expected_yield,
            new,
            receipt,
            value,
            by: None,
            mark: None,
            whence: Some("barn".into()),
            abroad: None,
            species: Some("oak".into()),
        }
        .into()
    })
}

fn find() -> impl Strategy<Value = Body> {
    let case = || (number(), any::<u32>()).prop_map(|(usable, minutes)| kinds::Case { usable, minutes });
    let money = (maybe(), maybe(), maybe(), prop::option::of((number(), maybe(), maybe())));
    let what = (number(), unit(), prop::option::of(any::<u32>()), prop::option::of(entry()));
    (on(), (case(), case(), case()), money, what).prop_map(|(on, (badly, usually, well), money, what)| {
        let ((asked, fee, km, new), (rough, unit, boards, lot)) = (money, what);
        let new = new.map(|(price, waste, tax)| kinds::NewStock {
            price,
            waste,
            tax,
            delivery: None,
            basis: None,
            seen: None,
            on: Day::parse("2026-02-10").unwrap(),
        });
        kinds::Find {
            on,
            name: String::new(),
            whence: Some("barn".into()),
            species: None,
            boards,
            rough,
            unit,
            basis: None,
            other_measure: None,
            asked,
            fee,
            km,
            cases: kinds::Cases { badly, usually, well },
            new,
            mark: None,
            lot,
        }
        .into()
    })
}

fn stock() -> impl Strategy<Value = Body> {
    let draw = (on(), source(), number(), unit(), bearer(), prop::option::of(entry())).prop_map(
        |(on, from, quantity, unit, bearer, returns)| {
            kinds::Draw { on, from, quantity, unit, bearer, side: None, stage: None, returns, note: None }
                .into()
        },
    );
    let sort = (on(), entry(), number(), number())
        .prop_map(|(on, lot, good, culled)| kinds::Sort { on, lot, good, culled, link: None }.into());
    let link =
        || prop::option::of(prop_oneof![Just(Link::Gathered), Just(Link::NailsOut), Just(Link::Milled)]);
    let cull =
        (on(), entry(), number(), link(), any::<bool>()).prop_map(|(on, lot, quantity, link, unexpected)| {
            kinds::Cull { on, lot, quantity, link, unexpected }.into()
        });
    const STATES: [ShelfState; 4] =
        [ShelfState::Empty, ShelfState::Counted, ShelfState::ThrownOut, ShelfState::Given];
    let look = (on(), source(), prop::sample::select(&STATES[..]), maybe(), prop::option::of(unit()))
        .prop_map(|(on, of, state, quantity, unit)| {
            kinds::Shelf { on, of, state, quantity, unit, note: None }.into()
        });
    let item = (on(), unit(), maybe(), maybe()).prop_map(|(on, unit, content, low)| {
        let item = kinds::Item::named(on, "", Use::Consumable, unit);
        kinds::Item { content, content_unit: Some(Unit::Millilitre), low, ..item }.into()
    });
    prop_oneof![4 => draw, 2 => sort, 2 => cull, 2 => find(), 2 => look, 2 => item, 4 => lot()].boxed()
}

fn work() -> impl Strategy<Value = Body> {
    let span = (moment(), prop::option::of(moment())).prop_map(|(from, to)| Span { from, to });
    let times = (prop::option::of(moment()), prop::option::of(moment()), prop::collection::vec(span, 0..3));
    let filmed = (side(), spans(), any::<bool>());
    let stretch = (on(), entry(), 1..30_u8, bearer(), times, prop::option::of(any::<u32>()), filmed)
        .prop_map(|(on, person, stage, bearer, (from, to, pauses), minutes, (side, rolling, one_off))| {
            let stage = standing_id(stage);
            kinds::Stretch {
                on,
                person,
                stage,
                bearer,
                side,
                from,
                to,
                minutes,
                pauses,
                rolling,
                together: None,
                still_running: None,
                step: None,
                one_off,
                note: None,
            }
            .into()
        });
    let person = (on(), number(), any::<bool>()).prop_map(|(on, an_hour, paid)| {
        let rates = vec![kinds::Rate { from: None, an_hour }];
        kinds::Person { on, name: String::new(), paid, rates, free: vec![] }.into()
    });
    let borne = (bearer(), side(), any::<bool>(), prop::option::of(entry()));
    let expense = (on(), number(), maybe(), borne).prop_map(|(on, amount, tax, borne)| {
        let (bearer, side, one_off, receipt) = borne;
        kinds::Expense {
            abroad: None,
            on,
            what: String::new(),
            amount,
            tax,
            tax_back: false,
            bearer,
            side,
            receipt,
            one_off,
        }
        .into()
    });
    let trip = (on(), number(), maybe(), prop::collection::vec((bearer(), any::<u32>()), 0..3)).prop_map(
        |(on, km, fee, shares)| {
            let shares = shares.into_iter().map(|(bearer, parts)| kinds::Share { bearer, parts }).collect();
            kinds::Trip { on, km, fee, shares }.into()
        },
    );
    let series = (prop::option::of(entry()), prop::option::of(any::<u32>()), maybe());
    let build = (on(), series).prop_map(|(on, (repeat_of, run_planned, normal_spoil))| {
        kinds::Build {
            on,
            title: String::new(),
            items: 0,
            due: None,
            publish: None,
            film_planned: None,
            repeat_of,
            run_planned,
            normal_spoil,
        }
        .into()
    });
    prop_oneof![4 => stretch, 2 => person, 2 => expense, 1 => trip, 1 => setting(), 2 => build].boxed()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(256))]

    #[test]
    fn nothing_panics_and_sums_still_add_up(
        bodies in prop::collection::vec((entry(), prop_oneof![stock(), work(), running()]), 1..60),
        as_of in moment(),
    ) {
        let mut journal = Journal::default();
        let pen = Pen { device: numbered(9, 1), now_ms: 1_795_000_000_000 };
        for (at, (entry, body)) in (0_u64..).zip(bodies) {
            let change = Change { entry, body: Some(body), settles: false };
            for line in pen.write(&journal, &[change], &mut || numbered(3, at)) {
                journal.add(&line.text).expect("reads");
            }
        }
        let shop = Shop::fold(&journal, &Zone::utc());
        let books = Books::close(&shop, as_of.instant);
        let (builds, lots, shelf) = everything(&books, &shop);
        for root in builds.iter().flat_map(BuildCost::roots).chain(lots.iter().flat_map(LotBook::roots)) {
            adds_up(root)?;
        }
        for line in shelf {
            let _ = books.preview(line.source, Quantity::ONE);
        }
        for build in &builds {
            let _ = (build.profit(), books.drawn_by(build.bearer));
        }
        for find in shop.finds.values() {
            let _ = salvage::appraise(&shop, find);
            let pile = find.rough.map(|quantity| Pile { quantity, unit: find.unit, boards: find.boards });
            let _ = pile.map(|pile| books.offer(find.whence.as_deref(), pile));
        }
        for lot in shop.lots.keys() {
            let _ = books.expected(&shop, *lot);
        }
        for build in shop.builds.keys() {
            let _ = books.freeze(*build);
        }
        let _ = (books.tools(), books.blades(), books.losses(), books.stock_losses(), books.tax(), books.net_of_all(), books.flags());
        prop_assert!(books.months(&shop).len() < 4_000, "one for each month of three centuries at most");
    }
}
