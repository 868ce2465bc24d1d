//! What stands before a publish date, and how many days each takes: the shop's own list, or the usual one.

use crate::dom::prelude::*;
use crate::{
    parts::{
        field::{Field, Typing},
        key::{Key, KeyKind},
        pick::{Choosable, Pick},
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
    },
    screens::{
        shop::{to_the_wrong, write_setting},
        stock::form::Form,
        trouble::Troubles,
    },
    shell::{
        Desk, Go,
        desk::{Mark, Marked, Phase},
        frame::Places,
    },
    words::{common, publish_day as words, publishing as said},
};
use benchslate_core::{
    journal::kinds::{DaysOf, SettingKey},
    measure::number,
    planning::publishing::leads::{self, Lead, LeadOf},
};

/// Rows of the maker's own in the form, beside the usual ones.
const OWN: usize = 2;
const DAYS: [DaysOf; 3] = [DaysOf::Calendar, DaysOf::Working, DaysOf::Theirs];
const MOST_WORDS: usize = 60;

/// The form.
#[component]
pub fn LeadsSheet() -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "publish-leads");
    let ready = Memo::new(move |_| desk.phase.get() == Phase::Ready);
    let rows = move || ready.get().then(|| untrack(|| rows(desk, form)));
    let keep = Callback::new(move |()| {
        if let Some(list) = read(desk, form) {
            write(desk, go, form, leads::text(&list), true);
        }
    });
    let usual = Callback::new(move |()| write(desk, go, form, String::new(), false));
    view! {
        <Sheet>
            <Head title=words::leads().to_owned() tight=true/>
            <Above>
                <Troubles/>
                <Read name=words::leads().to_owned() below=words::below().to_owned()>
                    <div class="form"><p class="note">{words::how_it_counts()}</p>{rows}</div>
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>
                    <Keys class="tall">
                        <Key label=common::leave().to_owned() on_tap=Callback::new(move |()| go.back())/>
                        <Key
                            label=words::common_list().to_owned()
                            note=words::common_practice().to_owned()
                            on_tap=usual
                        />
                        <Key
                            label=crate::words::add::keep().to_owned()
                            kind=KeyKind::Filled
                            on_tap=keep
                        />
                    </Keys>
                </Hand>
                <Places cell=1/>
            </Below>
        </Sheet>
    }
}

/// The list as it stands, and room for more of one's own.
fn standing(desk: Desk) -> Vec<Lead> {
    let (own, _) = desk.now_read(|view| leads::own(view.shop));
    let mut list = own.unwrap_or_else(leads::common);
    for usual in leads::common() {
        if !list.iter().any(|it| it.of == usual.of) {
            list.push(Lead { days: -1, ..usual });
        }
    }
    // Publishing first, the lock last, the rest where they stand.
    let (last, mut list): (Vec<Lead>, Vec<Lead>) = list.into_iter().partition(|it| it.of == LeadOf::Lock);
    let mine = list.iter().filter(|it| it.of == LeadOf::Own).count();
    let blank = Lead { of: LeadOf::Own, words: String::new(), days: -1, count: DaysOf::Calendar };
    list.extend(std::iter::repeat_n(blank, OWN.saturating_sub(mine)));
    list.extend(last);
    list
}

fn rows(desk: Desk, form: Form) -> AnyView {
    let list = standing(desk);
    let mut offered = Vec::new();
    for (at, lead) in list.iter().enumerate() {
        let days = if lead.days < 0 { String::new() } else { lead.days.to_string() };
        let of = DAYS.iter().position(|it| *it == lead.count).unwrap_or(0);
        offered.extend([
            (days_field(at), days),
            (of_field(at), of.to_string()),
            (words_field(at), lead.words.clone()),
        ]);
    }
    form.offer(offered);
    let choices: Vec<Choosable> =
        DAYS.iter().enumerate().map(|(at, of)| (at.to_string(), said::days_of(*of).to_owned())).collect();
    let row = move |(at, lead): (usize, Lead)| row(form, at, &lead, choices.clone());
    list.into_iter().enumerate().filter(|(_, it)| takes_days(it.of)).map(row).collect::<Vec<_>>().draw()
}

/// The two ends of the chain take no days of their own.
fn takes_days(of: LeadOf) -> bool {
    !matches!(of, LeadOf::Publish | LeadOf::Lock)
}

fn row(form: Form, at: usize, lead: &Lead, choices: Vec<Choosable>) -> AnyView {
    let own = lead.of == LeadOf::Own;
    let label = said::lead_of(lead.of).to_owned();
    let typed = move |field: String| Callback::new(move |text: String| form.set(&field, text));
    let (days, of, words_at) = (days_field(at), of_field(at), words_field(at));
    let words_cell = own.then(|| {
        view! {
            <Field
                id=words_at.clone()
                label=words::own_words().to_owned()
                class="whole"
                value=form.signal_of(words_at.clone())
                error=form.error_of(words_at.clone())
                on_input=typed(words_at)
            />
        }
    });
    // The row is named once: by its own words, or over its days.
    let name = words::row(&label);
    let days_label = if own { words::how_many().to_owned() } else { label };
    view! {
        <div class="cells" role="group" aria-label=name>
            {words_cell}
            <Field
                id=days.clone()
                label=days_label
                typing=Typing::Decimal
                value=form.signal_of(days.clone())
                error=form.error_of(days.clone())
                on_input=typed(days)
            />
            <Pick
                id=of.clone()
                label=words::which_days().to_owned()
                choices=Signal::stored(choices)
                value=form.signal_of(of.clone())
                on_choose=typed(of)
            />
        </div>
    }
}

fn days_field(at: usize) -> String {
    format!("days-{at}")
}

fn of_field(at: usize) -> String {
    format!("of-{at}")
}

fn words_field(at: usize) -> String {
    format!("words-{at}")
}

fn read(desk: Desk, form: Form) -> Option<Vec<Lead>> {
    form.all_right();
    let mut list = Vec::new();
    for (at, lead) in standing(desk).into_iter().enumerate() {
        if !takes_days(lead.of) {
            list.push(Lead { days: 0, ..lead });
            continue;
        }
        let Some(days) = form.read(&days_field(at), number::whole) else { continue };
        let words = form.now(&words_field(at)).trim().to_owned();
        if lead.of == LeadOf::Own && words.is_empty() {
            form.wrong(&words_field(at), crate::words::journal::name_missing().to_owned());
        } else if words.chars().count() > MOST_WORDS {
            form.wrong(&words_field(at), crate::words::journal::too_long(MOST_WORDS));
        }
        let of = form.now(&of_field(at)).parse::<usize>().ok();
        let count = of.and_then(|at| DAYS.get(at)).copied().unwrap_or(lead.count);
        list.push(Lead { days: i32::try_from(days).unwrap_or(i32::MAX), count, words, of: lead.of });
    }
    if form.is_wrong() {
        to_the_wrong();
        return None;
    }
    Some(list)
}

fn write(desk: Desk, go: Go, form: Form, value: String, own: bool) {
    desk.act_then(
        move |hand| vec![write_setting(hand, SettingKey::PublishLeads, None, value.clone())],
        move |_| {
            let what = words::marked_list(own).to_owned();
            Marked::from(Mark { kind: words::kind().to_owned(), what, second: None })
        },
        move |done| {
            if done.is_ok() {
                form.done(desk);
                go.back();
            }
        },
    );
}
