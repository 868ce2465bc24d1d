//! An element, built from its name inwards.

use super::{
    live,
    value::{IntoValue, Value},
    view::{AnyView, Drawn},
};
use leptos::{
    html::ElementType,
    prelude::{NodeRef, on_cleanup},
    tachys::{html::node_ref::NodeRefContainer, renderer::dom::Dom},
};
use send_wrapper::SendWrapper;
use std::rc::Rc;
use wasm_bindgen::{JsCast, JsValue, closure::Closure};
use web_sys::Event;

/// Hears an event.
trait Hears {
    fn hear(&self, event: Event);
}

impl<F: Fn(Event)> Hears for F {
    fn hear(&self, event: Event) {
        self(event);
    }
}

/// An element that is being built.
pub struct Element(web_sys::Element);

impl Element {
    /// Of HTML.
    pub fn new(name: &str) -> Element {
        Element(Dom::create_element(name, None))
    }

    /// Of a drawing.
    pub fn drawn(name: &str) -> Element {
        Element(Dom::create_element(name, Some("http://www.w3.org/2000/svg")))
    }

    /// An attribute that stays as it is.
    pub fn set(self, name: &'static str, value: &str) -> Element {
        Dom::set_attribute(&self.0, name, value);
        self
    }

    /// An attribute; `false` and `None` leave it out.
    pub fn attr(self, name: &'static str, value: impl IntoValue) -> Element {
        self.follow(value.value(), name, |element, name, value| match value {
            Some(value) => Dom::set_attribute(element, name, value),
            None => Dom::remove_attribute(element, name),
        })
    }

    /// A class that is on or off. Stands after `class=`.
    pub fn class(self, name: &'static str, on: impl IntoValue) -> Element {
        self.follow(on.value(), name, |element, name, on| {
            let _ = element.class_list().toggle_with_force(name, on.is_some());
        })
    }

    /// A property of its style, set from code: the policy of the page forbids it as an attribute.
    pub fn style(self, name: &'static str, value: impl IntoValue) -> Element {
        self.follow(value.value(), name, |element, name, value| match value {
            Some(value) => Dom::set_css_property(&Dom::style(element), name, value),
            None => Dom::remove_css_property(&Dom::style(element), name),
        })
    }

    /// A property of the element itself, as a text. What stands there already is not set again: a keyboard that is
    /// still composing a word in the field would lose it.
    pub fn prop(self, name: &'static str, value: impl IntoValue) -> Element {
        self.follow(value.value(), name, |element, name, value| {
            let value = value.unwrap_or_default();
            if property(element, name).as_deref() != Some(value) {
                Dom::set_property(element, name, &value.into());
            }
        })
    }

    fn follow(
        self,
        value: Value,
        name: &'static str,
        set: fn(&web_sys::Element, &str, Option<&str>),
    ) -> Element {
        let element = self.0.clone();
        live::value(value, Box::new(move |value| set(&element, name, value)));
        self
    }

    /// Hears an event as long as its owner is there.
    pub fn on(self, name: &'static str, act: impl Fn(Event) + 'static) -> Element {
        self.hear(name, Rc::new(act))
    }

    fn hear(self, name: &'static str, act: Rc<dyn Hears>) -> Element {
        // An element that is taken out may still be told that it lost the focus: by then nobody is to hear it.
        let heard = Rc::downgrade(&act);
        let act = SendWrapper::new(act);
        on_cleanup(move || drop(act));
        let closure = Closure::<dyn Fn(Event)>::new(move |event| {
            if let Some(act) = heard.upgrade() {
                act.hear(event);
            }
        });
        let _ = self.0.add_event_listener_with_callback(name, closure.into_js_value().unchecked_ref());
        self
    }

    /// Makes the element known to code.
    pub fn node_ref<E>(self, to: NodeRef<E>) -> Element
    where
        E: ElementType,
        E::Output: JsCast + Clone + 'static,
    {
        to.load(&self.0);
        self
    }

    /// What stands in it, after what is there.
    pub fn child(self, child: AnyView) -> Element {
        child.put_into(&self.0);
        self
    }

    /// Done.
    pub fn view(self) -> AnyView {
        AnyView::new(Drawn::Node(self.0.into()))
    }
}

/// What stands in the field, or is chosen in the list, that an event came from.
pub fn typed(event: &Event) -> String {
    event.target().and_then(|it| property(&it, "value")).unwrap_or_default()
}

fn property(of: &JsValue, name: &str) -> Option<String> {
    js_sys::Reflect::get(of, &name.into()).ok()?.as_string()
}
