//! Beside: a third column over the title block, on screens that are wide enough for one (`style/parts/beside.css`).
use crate::dom::prelude::*;
use leptos::html;

use super::sheet::on_resize;

/// Holds what a wide screen has room for beside the sheet. `shown` says whether it has, so that nobody works out
/// what no one sees.
#[component]
pub fn Beside(
    #[prop(into)] name: Signal<String>,
    shown: RwSignal<bool>,
    children: Children,
) -> impl IntoView {
    let here = NodeRef::<html::Div>::new();
    let look = move || {
        let wide = here.get_untracked().is_some_and(|it| it.client_width() > 0);
        if shown.get_untracked() != wide {
            shown.set(wide);
        }
    };
    on_resize([here], look);
    view! {
        <div class="beside" role="region" tabindex="0" aria-label=move || name.get() node_ref=here>{children()}</div>
    }
}
