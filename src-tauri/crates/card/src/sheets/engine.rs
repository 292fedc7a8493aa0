//! From a model to a laid-out document: Typst, driven step by step.

use serde::Serialize;
use typst::World;
use typst::comemo::{self, Constraint, Track};
use typst::diag::{At, SourceDiagnostic, SourceResult};
use typst::ecow::EcoVec;
use typst::engine::{Engine, Route, Sink, Traced};
use typst::foundations::{
    Content, Context, Dict, Func, IntoValue, Output, StyleChain, Target, TargetElem, Value,
};
use typst::introspection::{EmptyIntrospector, Introspector, MAX_ITERS};
use typst::syntax::Span;
use typst::utils::Protected;
use typst_layout::PagedDocument;

use super::world::SHEETS;
use super::{SheetModel, SheetOptions, SheetSize, symbol, text};
use crate::CardError;

/// The function of a template that makes a document of its inputs.
const DOCUMENT: &str = "document-of";
/// For how many more sheets Typst remembers what it made for one.
const REMEMBERED: usize = 4;

/// Sets the sheet.
pub fn set(model: &SheetModel, options: &SheetOptions) -> Result<PagedDocument, CardError> {
    let template = match options.size {
        SheetSize::Id1 => "id1.typ",
        SheetSize::A6 => "a6.typ",
        SheetSize::A5 => "a5.typ",
        SheetSize::A4 => "a4.typ",
    };
    typeset(template, inputs(model, options)?)
}

/// Sets a template with its inputs.
///
/// Typst's own `compile` takes inputs as a part of its library, on which everything depends that it remembers. As an
/// argument they leave the library as it is, so that the templates are evaluated once for all sheets, and what two
/// sheets share is laid out once.
pub fn typeset(template: &str, inputs: Dict) -> Result<PagedDocument, CardError> {
    let document = content(template, inputs).and_then(|content| lay_out(&content));
    comemo::evict(REMEMBERED);
    document.map_err(|faults| refused(&faults))
}

/// What a template makes of its inputs.
fn content(template: &str, inputs: Dict) -> SourceResult<Content> {
    let world: &dyn World = &*SHEETS;
    let (traced, mut sink) = (Traced::default(), Sink::new());
    let (world, traced) = (world.track(), traced.track());
    let (nowhere, route) = (Span::detached(), Route::default());
    let source = SHEETS.template(template).ok_or("there is no such template").at(nowhere)?;
    let module = typst_eval::eval(world, SHEETS.library(), traced, sink.track_mut(), route.track(), source)?;
    let function = module.field(DOCUMENT, ()).at(nowhere)?.clone().cast::<Func>().at(nowhere)?;
    let mut engine = Engine {
        world,
        library: SHEETS.library(),
        introspector: Protected::new(EmptyIntrospector.track()),
        traced,
        sink: sink.track_mut(),
        route,
    };
    let content = function.call(&mut engine, Context::none().track(), [inputs])?;
    Ok(content.display())
}

/// Lays content out until the page numbers in it are those of the pages that come out.
fn lay_out(content: &Content) -> SourceResult<PagedDocument> {
    let mut laid = lay_out_once(content, &EmptyIntrospector)?;
    for _ in 1..MAX_ITERS {
        if laid.settled {
            break;
        }
        laid = lay_out_once(content, Output::introspector(&laid.document))?;
    }
    if laid.delayed.is_empty() { Ok(laid.document) } else { Err(laid.delayed) }
}

/// A document as it came out of one round.
struct Laid {
    document: PagedDocument,
    /// Whether what it says of its pages holds of them.
    settled: bool,
    /// What is wrong unless a later round puts it right.
    delayed: EcoVec<SourceDiagnostic>,
}

/// Lays content out, with page numbers from the round before.
fn lay_out_once(content: &Content, before: &dyn Introspector) -> SourceResult<Laid> {
    let world: &dyn World = &*SHEETS;
    let (traced, mut sink, asked) = (Traced::default(), Sink::new(), Constraint::new());
    let target = TargetElem::target.set(Target::Paged).wrap();
    let base = StyleChain::new(&SHEETS.library().styles);
    let mut engine = Engine {
        world: world.track(),
        library: SHEETS.library(),
        introspector: Protected::new(before.track_with(&asked)),
        traced: traced.track(),
        sink: sink.track_mut(),
        route: Route::default(),
    };
    let document = PagedDocument::create(&mut engine, content, base.chain(&target))?;
    let settled = asked.validate(Output::introspector(&document));
    Ok(Laid { document, settled, delayed: sink.delayed() })
}

/// The first of Typst's complaints.
pub fn refused(faults: &[SourceDiagnostic]) -> CardError {
    CardError::Setting(faults.first().map(|fault| fault.message.to_string()).unwrap_or_default())
}

/// A model as JSON, its texts made printable, and its language one that Typst takes.
pub fn printable(model: &impl Serialize, lang: &str) -> Result<String, CardError> {
    let mut json = serde_json::to_value(model).map_err(|fault| unwritten(&fault))?;
    text::make_printable(&mut json, lang);
    json["lang"] = text::primary_language(lang).into();
    Ok(json.to_string())
}

fn unwritten(fault: &serde_json::Error) -> CardError {
    CardError::Setting(fault.to_string())
}

/// The model and the layout as JSON, and the square as a shape.
fn inputs(model: &SheetModel, options: &SheetOptions) -> Result<Dict, CardError> {
    let mut inputs = Dict::new();
    inputs.insert("model".into(), printable(model, &model.lang)?.into_value());
    let layout = serde_json::to_string(&options.layout()).map_err(|fault| unwritten(&fault))?;
    inputs.insert("layout".into(), layout.into_value());
    inputs.insert("square".into(), Value::Content(square(model, options.size)));
    Ok(inputs)
}

/// The square as a shape, as large as a card of this size has it.
pub fn square(model: &SheetModel, size: SheetSize) -> Content {
    let square = model.square.square();
    symbol::draw(square, size.module_um(square.side() + 2 * crate::QUIET_ZONE))
}
