//! A view among those of Leptos: the router's child, and what `#[component]` asks of what it returns.

use super::{live::Region, view::AnyView};
use leptos::{
    attr::any_attribute::AnyAttribute,
    prelude::{Mountable, Render, RenderHtml},
    tachys::{hydration::Cursor, no_attrs, renderer::dom::Dom, view::Position, view::PositionState},
};
use web_sys::{Element, Node};

no_attrs!(AnyView);

impl Render for AnyView {
    type State = Stands;

    fn build(self) -> Stands {
        Stands { region: Region::new(), view: Some(self) }
    }

    fn rebuild(self, state: &mut Stands) {
        state.region.show(self);
    }
}

/// A view in the page. Its nodes can stand only where there is a parent, so it waits until it is put somewhere.
pub struct Stands {
    region: Region,
    view: Option<AnyView>,
}

impl Mountable for Stands {
    fn unmount(&mut self) {
        self.region.leave();
    }

    fn mount(&mut self, parent: &Element, marker: Option<&Node>) {
        Dom::insert_node(parent, &self.region.first, marker);
        if let Some(view) = self.view.take() {
            self.region.show(view);
        }
    }

    fn insert_before_this(&self, child: &mut dyn Mountable) -> bool {
        let first: &Node = &self.region.first;
        let Some(parent) = first.parent_element() else { return false };
        child.mount(&parent, Some(first));
        true
    }

    fn elements(&self) -> Vec<Element> {
        Vec::new()
    }
}

/// There is no server to draw on: only what the traits ask for.
impl RenderHtml for AnyView {
    type AsyncOutput = AnyView;
    type Owned = AnyView;
    const MIN_LENGTH: usize = 0;

    fn dry_resolve(&mut self) {}

    async fn resolve(self) -> AnyView {
        self
    }

    fn to_html_with_buf(self, _: &mut String, _: &mut Position, _: bool, _: bool, _: Vec<AnyAttribute>) {}

    fn hydrate<const FROM_SERVER: bool>(self, _: &Cursor, _: &PositionState) -> Stands {
        self.build()
    }

    fn into_owned(self) -> AnyView {
        self
    }
}
