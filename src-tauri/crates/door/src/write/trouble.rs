//! A trouble is written down, and amended until it has ended.

use book::Change;
use book::content::{Content, ContentKind, TroubleContent};
use rules::running::{OdometerStatus, Reading, Track};
use units::{BookId, SubjectId};

use super::ask_about;
use crate::car::Car;
use crate::{Door, Refusal, TroubleForm, WrittenView, forms};

impl Door {
    pub(super) fn write_trouble(
        &mut self,
        book: &str,
        form: &TroubleForm,
        keep: bool,
    ) -> Result<WrittenView, Refusal> {
        let car = self.car(book)?;
        let trouble = self.read_trouble(&car, &car.track, form, keep)?;
        self.write(car.book, Change::Begin(Content::Trouble(trouble)))
    }

    pub(super) fn amend_trouble(
        &mut self,
        book: &str,
        subject: SubjectId,
        form: &TroubleForm,
        why: &str,
        keep: bool,
    ) -> Result<WrittenView, Refusal> {
        let car = self.car(book)?;
        let trouble = self.read_trouble(&car, &car.track_without(subject), form, keep)?;
        let why = forms::note(why, "why")?;
        self.write(car.book, Change::Amend { subject, content: Content::Trouble(trouble), why })
    }

    fn read_trouble(
        &self,
        car: &Car,
        track: &Track,
        form: &TroubleForm,
        keep: bool,
    ) -> Result<TroubleContent, Refusal> {
        let trouble = forms::trouble(form, car.unit(), self.clock.today());
        let trouble = trouble.map_err(|refusal| refusal.within("trouble"))?;
        if let Some(visit) = trouble.end.as_ref().and_then(|end| end.visit) {
            self.visit_line(car.book, visit).map_err(|refusal| refusal.at("trouble.end.visit"))?;
        }
        if let Some(shown) = trouble.shown {
            let reading = Reading { day: trouble.day, shown, status: OdometerStatus::Actual };
            ask_about(car, track, reading, &keep.into()).map_err(|refusal| refusal.at("trouble.reading"))?;
        }
        Ok(trouble)
    }

    /// A trouble ends with a visit that counts.
    fn visit_line(&self, book: BookId, visit: SubjectId) -> Result<(), Refusal> {
        let line = self.shelf.line(book, visit)?;
        match line.content.kind() {
            ContentKind::Visit if line.struck.is_none() => Ok(()),
            ContentKind::Visit => Err(Refusal::new("struck")),
            _ => Err(Refusal::new("other-kind")),
        }
    }
}
