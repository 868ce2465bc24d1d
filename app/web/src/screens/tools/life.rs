//! How long a tool will still last, from a day on: what is left of it goes over those hours. What it wore before stays.

use super::look;
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{AnswerText, Outcome},
        field::{Cells, Typing},
        sheet::{Above, Below, Hand, Head, Read, Sheet},
    },
    screens::{
        form_keys::form_keys,
        hours::fields,
        journal::{entry, running_facts},
        shop,
        stock::form::{Cell, Form},
    },
    shell::{Desk, Go, desk::View, frame::Places},
    words::tools as words,
};
use benchslate_core::{
    costing::Books,
    journal::{
        Body, Change, Id,
        kinds::{LifeLeft, Tool},
    },
    measure::{Dec, Instant, day, duration},
};

const LEFT: &str = "life-left";
const FROM: &str = "life-from";

/// The form.
#[component]
pub fn LifeSheet(tool: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "tool-life");
    let today = desk.now_read(|view| view.shop.zone.day(desk.at_tap()));
    form.offer(vec![(FROM.to_owned(), today.to_string())]);
    let name = Signal::derive(move || Some(desk.read(|view| running_facts::tool(view, tool))));
    let outcome = Memo::new(move |_| {
        let (left, from) = (form.get(LEFT), form.get(FROM));
        let now = desk.minute();
        desk.read(|view| comes_to(view, tool, &left, &from, now))
    });
    let keep = Callback::new(move |()| keep(desk, go, form, tool));
    view! {
        <Sheet>
            <Head title=words::life_title().to_owned() note=name tight=true/>
            <Above>
                <Read name=words::life_title().to_owned()>
                    <div class="form">
                        <Cells>
                            {Cell::words(LEFT, words::hours_left()).of("h").draw(form)}
                            {fields::typed(form, FROM, words::from_day(), "", "", Typing::Date)}
                        </Cells>
                        {move || outcome.get().map(|figure| {
                            let text = AnswerText { label: words::wear_then().to_owned(), figure, ..AnswerText::default() };
                            view! { <Outcome text/> }
                        })}
                        <p class="note">{words::what_life_does()}</p>
                    </div>
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>{form_keys(go, words::keep_life(), keep)}</Hand>
                <Places cell=4/>
            </Below>
        </Sheet>
    }
}

/// The tool with that said of it; what was said from the same day before is put in its place.
fn with_left(it: &Tool, left: LifeLeft) -> Tool {
    let mut all: Vec<LifeLeft> = it.left.iter().filter(|other| other.from != left.from).cloned().collect();
    all.push(left);
    Tool { left: all, ..it.clone() }
}

/// Wear a run hour then.
fn comes_to(view: &View, tool: Id, left: &str, from: &str, now: Instant) -> Option<String> {
    let hours = duration::hours(left).ok().filter(|it| !it.is_zero())?;
    let from = day::typed_near(from, view.shop.zone.day(now)).ok()?;
    let Body::Tool(it) = view.journal.body(tool)? else { return None };
    let then = with_left(it, LifeLeft { from, hours: Dec::from(hours.in_hours()) });
    let shop = view.shop.with(&[(tool, then.into())]);
    let books = Books::close(&shop, now);
    Some(look::rate(view, books.tool(tool)?.wear?))
}

fn keep(desk: Desk, go: Go, form: Form, tool: Id) {
    form.all_right();
    let today = desk.now_read(|view| view.shop.zone.day(desk.at_tap()));
    let hours = fields::must(form, LEFT, duration::hours);
    if hours.is_some_and(|hours| hours.is_zero()) {
        form.wrong(LEFT, crate::words::journal::more_than_none().to_owned());
    }
    let from = fields::must(form, FROM, |text| day::typed_near(text, today));
    let (Some(hours), Some(from), false) = (hours, from, form.is_wrong()) else {
        return shop::to_the_wrong();
    };
    let left = LifeLeft { from, hours: Dec::from(hours.in_hours()) };
    desk.act_then(
        move |hand| match hand.journal.body(tool) {
            Some(Body::Tool(it)) => vec![Change::write(tool, with_left(it, left.clone()))],
            _ => Vec::new(),
        },
        move |after| entry::marked(&after.view(), tool, words::marked_life()),
        move |done| {
            if done.is_ok() {
                form.done(desk);
                go.back();
            }
        },
    );
}
