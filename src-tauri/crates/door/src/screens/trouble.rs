//! A trouble as shown: when to stop first, what it may be, and the checks in their order.

use book::content::{Said, TroubleContent};
use rules::trouble::codes::{self, Scan};
use rules::trouble::{Complaint, Danger, Sign, Stop, Suspect, Trouble, Urgency};
use rules::vehicle::Vehicle;
use units::{DistanceUnit, SubjectId};

use super::checks::{check_rows, costs, mend_view, per_mille};
use super::codes::{code_of_book, scan_view};
use super::guides::cautions;
use super::places::vehicle_line;
use crate::car::Car;
use crate::troubles::{TroubleRow, causes_before, codes_of, complaint, read_scans};
use crate::{
    AnswerForm, AnswerKey, Door, EndForm, EndView, HereForm, Refusal, ScanForm, SignView, StopUrgency,
    StopView, SuspectView, SymptomLine, ToolLine, TroubleForm, TroubleLine, TroubleView, TroublesView, forms,
};

impl Door {
    /// What a trouble may be, as far as it is typed.
    pub(crate) fn trouble_view(
        &self,
        book: &str,
        form: &TroubleForm,
        subject: Option<&str>,
        here: &HereForm,
    ) -> Result<TroubleView, Refusal> {
        let car = self.car(book)?;
        let subject = subject.map(str::parse).transpose()?;
        let read = forms::draft(form, car.unit(), self.clock.today());
        self.trouble_as(&car, &read.map_err(|refusal| refusal.within("trouble"))?, subject, here)
    }

    /// What a trouble may be, as it stands in the book.
    pub(crate) fn trouble_of_view(
        &self,
        book: &str,
        subject: &str,
        here: &HereForm,
    ) -> Result<TroubleView, Refusal> {
        let car = self.car(book)?;
        let row = self.trouble_row(car.book, subject.parse()?)?;
        self.trouble_as(&car, &row.content, Some(row.subject), here)
    }

    fn trouble_as(
        &self,
        car: &Car,
        trouble: &TroubleContent,
        subject: Option<SubjectId>,
        here: &HereForm,
    ) -> Result<TroubleView, Refusal> {
        forms::tools(here).map_err(|refusal| refusal.within("here"))?;
        let (tables, today) = (Trouble::shipped()?, self.clock.today());
        let all = self.troubles(car.book)?;
        let told = read_scans(&all, car);
        let scans: Vec<Scan> = trouble.scans.iter().map(|scan| codes::read(&scan.text)).collect();
        let before = causes_before(&all, subject);
        let complaint = complaint(trouble, &scans, before, here, car, today)?;
        let suspects = tables.suspects(&complaint);
        let plan = tables.plan(&complaint);
        let views = scans.iter().map(|scan| scan_view(scan, Some((car, &told))));
        let suspected = suspects.causes.iter().map(|suspect| self.suspect_view(suspect, &complaint));
        Ok(TroubleView {
            vehicle: vehicle_line(car),
            today: today.to_string(),
            subject: subject.map(|subject| subject.to_string()),
            form: trouble_form(trouble, car.unit()),
            stop: tables.stop_first(&complaint).into_iter().map(stop_view).collect(),
            scans: views.collect::<Result<_, _>>()?,
            suspects: suspected.collect(),
            other: per_mille(suspects.other),
            checks: check_rows(&plan, self.catalogue),
            cautions: cautions()?,
            held: plan.held.iter().map(|check| check.key.clone()).collect(),
            costs: costs(&plan),
            symptoms: symptoms(tables, &car.vehicle),
            tools: tools(tables),
        })
    }

    fn suspect_view(&self, suspect: &Suspect<'_>, complaint: &Complaint<'_>) -> SuspectView {
        let key = &suspect.cause.key;
        SuspectView {
            cause: key.clone(),
            chance: per_mille(suspect.chance),
            before: complaint.before.contains(key),
            mend: mend_view(suspect.cause.mend_for(complaint.vehicle, self.catalogue), self.catalogue),
        }
    }

    /// The troubles that have not ended, newest first.
    pub(super) fn open_troubles(&self, car: &Car) -> Result<Vec<TroubleLine>, Refusal> {
        let rows = self.troubles(car.book)?;
        let open = rows.iter().rev().filter(|row| row.content.end.is_none());
        Ok(open.map(|row| trouble_line(row, car)).collect())
    }

    /// The troubles of a car, and the life of its codes.
    pub(crate) fn troubles_view(&self, book: &str) -> Result<TroublesView, Refusal> {
        let car = self.car(book)?;
        let mut rows = self.troubles(car.book)?;
        let scans = read_scans(&rows, &car);
        let codes = codes_of(&scans).into_iter().map(|code| code_of_book(code, &car, &scans));
        let codes = codes.collect::<Result<_, _>>()?;
        rows.reverse();
        rows.sort_by_key(|row| row.content.end.is_some());
        Ok(TroublesView {
            vehicle: vehicle_line(&car),
            troubles: rows.iter().map(|row| trouble_line(row, &car)).collect(),
            codes,
        })
    }
}

/// The refusal of a symptom that this car cannot show, for who typed it by its key; a form offers only those that it can.
pub fn refuse_elsewhere(view: &TroubleView) -> Option<Refusal> {
    let elsewhere = |key: &&String| view.symptoms.iter().all(|symptom| symptom.key != **key);
    let key = view.form.symptoms.iter().find(elsewhere)?;
    Some(Refusal::new("symptom-elsewhere").with("text", key))
}

fn trouble_line(row: &TroubleRow, car: &Car) -> TroubleLine {
    let content = &row.content;
    let scans = read_scans(std::slice::from_ref(row), car);
    let end = content.end.as_ref().map(|end| EndView {
        day: end.day.to_string(),
        visit: end.visit.map(|visit| visit.to_string()),
        cause: Some(&end.cause).filter(|cause| !cause.is_empty()).cloned(),
    });
    TroubleLine {
        subject: row.subject.to_string(),
        day: content.day.to_string(),
        words: content.words.clone(),
        symptoms: content.symptoms.clone(),
        codes: codes_of(&scans).into_iter().map(|code| code.to_string()).collect(),
        end,
    }
}

fn stop_view(stop: Stop) -> StopView {
    StopView {
        danger: stop.danger.key().to_owned(),
        urgency: match stop.danger.urgency() {
            Urgency::Stop => StopUrgency::Stop,
            Urgency::Gently => StopUrgency::Gently,
            Urgency::Soon => StopUrgency::Soon,
        },
        sign: match stop.sign {
            Sign::Symptom(symptom) => SignView::Symptom { symptom },
            Sign::Code(code) => SignView::Code { code },
        },
    }
}

fn symptoms(tables: &Trouble, vehicle: &Vehicle) -> Vec<SymptomLine> {
    let mut symptoms: Vec<_> = tables.symptoms_of(vehicle).collect();
    symptoms.sort_by_key(|symptom| symptom.about);
    let line = |symptom: &rules::trouble::Symptom| SymptomLine {
        key: symptom.key.clone(),
        about: symptom.about.key().to_owned(),
        danger: symptom.danger.map(Danger::key).map(str::to_owned),
    };
    symptoms.into_iter().map(line).collect()
}

fn tools(tables: &Trouble) -> Vec<ToolLine> {
    tables.tools().iter().map(|tool| ToolLine { key: tool.key.clone(), usual: tool.usual }).collect()
}

/// All that is known of a trouble, as a form can take it back.
pub(super) fn trouble_form(trouble: &TroubleContent, unit: DistanceUnit) -> TroubleForm {
    let reading =
        |shown: Option<units::Distance>| shown.map(|shown| shown.floor(unit).to_string()).unwrap_or_default();
    let scans = trouble.scans.iter().map(|scan| ScanForm {
        day: scan.day.to_string(),
        reading: reading(scan.shown),
        text: scan.text.clone(),
        cleared: scan.cleared,
    });
    let end = trouble.end.as_ref().map(|end| EndForm {
        day: end.day.to_string(),
        visit: end.visit.map(|visit| visit.to_string()).unwrap_or_default(),
        cause: end.cause.clone(),
    });
    TroubleForm {
        day: trouble.day.to_string(),
        reading: reading(trouble.shown),
        words: trouble.words.clone(),
        when: trouble.when.clone(),
        symptoms: trouble.symptoms.clone(),
        absent: trouble.absent.clone(),
        scans: scans.collect(),
        answers: answers(trouble),
        asked: trouble.asked.clone(),
        end,
    }
}

/// What the checks said.
pub(super) fn answers(trouble: &TroubleContent) -> Vec<AnswerForm> {
    let answer = |said| match said {
        Said::Found => AnswerKey::Found,
        Said::NotFound => AnswerKey::NotFound,
        Said::Skipped => AnswerKey::Skipped,
    };
    let rows = trouble.answers.iter();
    rows.map(|row| AnswerForm { check: row.check.clone(), answer: answer(row.said) }).collect()
}
