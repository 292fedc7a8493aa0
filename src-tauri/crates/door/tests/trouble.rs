//! Troubles through the door: what to read first, how the book and each answer move the suspects, the life of a
//! trouble and its codes in the book, the brief for the workshop, and the guides with the car's own numbers.
#![allow(clippy::unwrap_used)]

use door::{
    AnswerForm, AnswerKey, Because, BriefView, Clock, CodeView, CodesView, Day, Door, EndForm, GuideView,
    HereForm, ItemForm, ItemView, KnownView, LineContent, ReadingForm, Request, Response, ScanForm,
    SheetView, SignView, StopUrgency, TodayView, TroubleForm, TroubleLine, TroubleView, TroublesView,
    VehicleForm, VisitForm,
};

const TODAY: &str = "2026-06-01";
const OIL: u32 = 1;
const PLUGS: u32 = 5;

/// A petrol car that shows 90 000 km today, and its door.
struct Case {
    door: Door,
    book: String,
    _folder: tempfile::TempDir,
}

fn car() -> VehicleForm {
    VehicleForm {
        name: "Thistle".to_owned(),
        engine: "petrol".to_owned(),
        unit: "km".to_owned(),
        first_use: "2016-06-01".to_owned(),
        ..VehicleForm::default()
    }
}

fn case() -> Case {
    let folder = tempfile::tempdir().unwrap();
    let today: Day = TODAY.parse().unwrap();
    let mut door = Door::open(folder.path(), Clock::Fixed(today)).unwrap();
    let Response::Written(written) = door.ask(Request::AddVehicle { vehicle: car() }).unwrap() else {
        panic!()
    };
    let mut case = Case { door, book: written.book, _folder: folder };
    let reading = ReadingForm { reading: "90000".to_owned(), ..ReadingForm::default() };
    case.written(Request::TakeReading { book: case.book.clone(), reading, keep: false.into() });
    case
}

fn keys(keys: &[&str]) -> Vec<String> {
    keys.iter().map(|&key| key.to_owned()).collect()
}

fn shows(symptoms: &[&str]) -> TroubleForm {
    TroubleForm { symptoms: keys(symptoms), ..TroubleForm::default() }
}

fn scan(day: &str, text: &str) -> ScanForm {
    ScanForm { day: day.to_owned(), text: text.to_owned(), ..ScanForm::default() }
}

fn answered(check: &str, answer: AnswerKey) -> AnswerForm {
    AnswerForm { check: check.to_owned(), answer }
}

impl Case {
    fn written(&mut self, request: Request) -> String {
        match self.door.ask(request).unwrap() {
            Response::Written(written) => written.subject,
            other => panic!("{other:?}"),
        }
    }

    fn today(&mut self) -> TodayView {
        match self.door.ask(Request::Today { book: self.book.clone() }).unwrap() {
            Response::Today(view) => view,
            other => panic!("{other:?}"),
        }
    }

    fn ask(&mut self, trouble: TroubleForm, here: HereForm) -> TroubleView {
        match self
            .door
            .ask(Request::Trouble { book: self.book.clone(), trouble, subject: None, here })
            .unwrap()
        {
            Response::Trouble(view) => *view,
            other => panic!("{other:?}"),
        }
    }

    fn view(&mut self, trouble: TroubleForm) -> TroubleView {
        self.ask(trouble, HereForm::default())
    }

    fn write(&mut self, trouble: TroubleForm) -> String {
        self.written(Request::WriteTrouble { book: self.book.clone(), trouble, keep: false })
    }

    fn amend(&mut self, subject: &str, trouble: TroubleForm) {
        let (book, subject) = (self.book.clone(), subject.to_owned());
        self.written(Request::AmendTrouble { book, subject, trouble, why: String::new(), keep: false });
    }

    fn troubles(&mut self) -> TroublesView {
        match self.door.ask(Request::Troubles { book: self.book.clone() }).unwrap() {
            Response::Troubles(view) => view,
            other => panic!("{other:?}"),
        }
    }

    fn visit(&mut self, day: &str, item: u32) -> String {
        let visit =
            VisitForm { day: day.to_owned(), items: vec![ItemForm::Catalogue(item)], ..VisitForm::default() };
        self.written(Request::RecordVisit { book: self.book.clone(), visit, keep: false })
    }

    fn brief(&mut self, subject: &str) -> BriefView {
        let request = Request::Brief { book: self.book.clone(), subject: subject.to_owned() };
        let Response::Brief(view) = self.door.ask(request).unwrap() else { panic!() };
        *view
    }

    fn guide(&mut self, key: &str) -> GuideView {
        let request = Request::Guide { book: self.book.clone(), key: key.to_owned() };
        let Response::Guide(view) = self.door.ask(request).unwrap() else { panic!() };
        view
    }

    fn sheet(&mut self) -> SheetView {
        let Response::Sheet(view) = self.door.ask(Request::Sheet { book: self.book.clone() }).unwrap() else {
            panic!()
        };
        view
    }
}

fn chance(view: &TroubleView, cause: &str) -> u16 {
    view.suspects.iter().find(|suspect| suspect.cause == cause).unwrap().chance
}

fn code<'a>(codes: &'a [CodeView], code: &str) -> &'a CodeView {
    codes.iter().find(|view| view.code == code).unwrap()
}

/// The bytes are those of check-values, section 3: on CAN a count follows 43 (43 02 01 02 01 13 is two codes).
#[test]
fn codes_are_read_from_whatever_a_scan_tool_gives() {
    let view: CodesView = door::read_codes("P0300\n0420\n43 02 01 02 01 13").unwrap();
    let told: Vec<_> = view.codes.iter().map(|code| (code.code.as_str(), code.status.as_str())).collect();
    assert_eq!(
        told,
        [("P0300", "unstated"), ("P0420", "unstated"), ("P0102", "confirmed"), ("P0113", "confirmed")]
    );
    let misfire = code(&view.codes, "P0300");
    assert_eq!(misfire.meaning.as_deref(), Some("code-P0300"));
    assert_eq!((misfire.system.as_str(), misfire.origin.as_str()), ("powertrain", "standard"));
    assert!(misfire.urgency.is_some() && !misfire.causes.is_empty() && misfire.life.is_none());
    assert_eq!(view.answered, ["confirmed"]);
}

#[test]
fn a_makers_own_code_has_no_meaning_here() {
    let view = door::read_codes("P1234").unwrap();
    let own = code(&view.codes, "P1234");
    assert_eq!((own.origin.as_str(), own.meaning.as_deref(), own.causes.len()), ("maker", None, 0));
}

#[test]
fn stop_comes_before_any_list() {
    let mut case = case();
    let view = case.view(shows(&["rough-idle", "oil-lamp", "wheel-loose"]));
    let dangers: Vec<_> = view.stop.iter().map(|stop| stop.danger.as_str()).collect();
    assert_eq!(dangers, ["wheel", "oil-pressure"]);
    let dark = HereForm { at_night: true, ..HereForm::default() };
    let [day, night] = [HereForm::default(), dark].map(|here| case.ask(shows(&["charge-lamp"]), here).stop);
    assert_eq!((day[0].danger.as_str(), night[0].danger.as_str()), ("charging", "charging-at-night"));
}

/// A code says stop as a lamp does, and what it forbids is named and not listed.
#[test]
fn a_code_without_oil_pressure_says_stop_and_holds_back_what_runs_the_engine() {
    let trouble = TroubleForm { scans: vec![scan(TODAY, "P0524")], ..TroubleForm::default() };
    let view = case().view(trouble);
    let [stop] = &view.stop[..] else { panic!("{:?}", view.stop) };
    assert_eq!((stop.danger.as_str(), stop.urgency), ("oil-pressure", StopUrgency::Stop));
    assert_eq!(stop.sign, SignView::Code { code: "P0524".to_owned() });
    assert!(view.checks.iter().all(|row| !view.held.contains(&row.check)));
    assert!(view.checks.iter().any(|row| row.check == "read-dipstick"), "{:?}", view.checks);
}

#[test]
fn every_caution_of_a_check_is_told_and_the_grave_ones_one_by_one() {
    let view = case().view(shows(&["grinding-when-braking", "uses-oil", "milky-oil", "hard-cold-start"]));
    for key in view.checks.iter().flat_map(|row| &row.cautions) {
        assert!(view.cautions.iter().any(|caution| caution.key == *key), "{key}");
    }
    let grave = |key: &str| view.cautions.iter().any(|caution| caution.key == key && caution.one_by_one);
    assert!(grave("jacking") && grave("fumes") && !grave("hot-engine"));
}

#[test]
fn before_anything_was_told_nothing_is_suspected() {
    let view = case().view(TroubleForm::default());
    assert!(view.checks.is_empty() && view.held.is_empty() && view.other == 1_000);
}

#[test]
fn the_chances_are_of_one_whole_and_every_row_says_why() {
    let mut case = case();
    let view = case.view(shows(&["rough-idle", "hiss-at-idle"]));
    let sum: u32 = view.suspects.iter().map(|suspect| u32::from(suspect.chance)).sum();
    let rounding = u32::try_from(view.suspects.len()).unwrap() / 2 + 1;
    assert!((sum + u32::from(view.other)).abs_diff(1_000) <= rounding, "{sum}");
    assert_eq!(view.suspects[0].cause, "vacuum-leak");
    assert!(!view.checks.is_empty() && view.checks.iter().all(|row| !row.why.is_empty() && row.cost > 0.0));
    let symptom = Because::Symptom { symptom: "hiss-at-idle".to_owned(), cause: "vacuum-leak".to_owned() };
    assert!(view.checks.iter().any(|row| row.why.contains(&symptom)));
    let costs = view.costs;
    assert!(costs.at_least <= costs.order && costs.order <= costs.by_ratio, "{costs:?}");
}

#[test]
fn an_electric_car_is_not_asked_how_it_idles() {
    let mut case = case();
    let vehicle = VehicleForm { engine: "electric".to_owned(), ..car() };
    case.written(Request::ChangeVehicle { book: case.book.clone(), vehicle });
    let view = case.view(TroubleForm::default());
    assert!(!view.symptoms.iter().any(|line| line.key == "rough-idle"));
    assert!(view.symptoms.iter().any(|line| line.about == "electric-drive"));
}

#[test]
fn an_answer_moves_the_suspects_and_leaves_the_list() {
    let mut case = case();
    let before = case.view(shows(&["rough-idle"]));
    let asked =
        |answer| TroubleForm { answers: vec![answered("look-at-plugs", answer)], ..shows(&["rough-idle"]) };
    let nothing = case.view(asked(AnswerKey::NotFound));
    let found = case.view(asked(AnswerKey::Found));
    let skipped = case.view(asked(AnswerKey::Skipped));
    let worn = |view: &TroubleView| chance(view, "spark-plug-worn");
    assert!(worn(&nothing) < worn(&before) && worn(&before) < worn(&found));
    assert_eq!(worn(&skipped), worn(&before));
    for view in [&found, &skipped] {
        assert!(!view.checks.iter().any(|row| row.check == "look-at-plugs"));
    }
}

#[test]
fn work_of_last_week_raises_what_it_can_have_upset() {
    let mut case = case();
    let before = chance(&case.view(shows(&["rough-idle"])), "vacuum-leak");
    case.visit("2026-05-28", PLUGS);
    let view = case.view(shows(&["rough-idle"]));
    assert!(chance(&view, "vacuum-leak") > before);
    let touched = view.checks.iter().flat_map(|row| &row.why).find_map(|why| match why {
        Because::Touched { item, days, cause } if cause == "vacuum-leak" => Some((item.clone(), *days)),
        _ => None,
    });
    assert_eq!(touched, Some((ItemView::Catalogue { number: PLUGS, key: "spark-plugs".to_owned() }, 4)));
}

#[test]
fn a_code_speaks_for_the_causes_at_which_it_points() {
    let mut case = case();
    let with = |text| TroubleForm { scans: vec![scan("", text)], ..shows(&["engine-lamp"]) };
    let without = case.view(shows(&["engine-lamp"]));
    let view = case.view(with("P0420"));
    assert!(chance(&view, "catalyst-worn") > 2 * chance(&without, "catalyst-worn"));
    assert_eq!(view.scans.len(), 1);
    let whys = view.checks.iter().flat_map(|row| &row.why);
    assert!(whys.into_iter().any(|why| matches!(why, Because::Code { code, .. } if code == "P0420")));
}

#[test]
fn a_trouble_lives_in_the_book_until_a_visit_ends_it_and_its_cause_is_remembered() {
    let mut case = case();
    let noticed = TroubleForm {
        day: "2026-05-01".to_owned(),
        reading: "89000".to_owned(),
        words: "Shakes at the lights".to_owned(),
        ..shows(&["rough-idle"])
    };
    let subject = case.write(noticed.clone());
    let request =
        Request::TroubleOf { book: case.book.clone(), subject: subject.clone(), here: HereForm::default() };
    let Response::Trouble(view) = case.door.ask(request).unwrap() else { panic!() };
    assert_eq!(
        (view.subject.as_deref(), view.form.words.as_str()),
        (Some(subject.as_str()), "Shakes at the lights")
    );

    let visit = case.visit("2026-05-20", PLUGS);
    let end = EndForm { day: String::new(), visit: visit.clone(), cause: "spark-plug-worn".to_owned() };
    let looked = vec![answered("look-at-plugs", AnswerKey::Found)];
    case.amend(&subject, TroubleForm { answers: looked, end: Some(end), ..noticed });
    let listed = case.troubles().troubles;
    let ended = listed[0].end.clone().unwrap();
    assert_eq!(
        (ended.day.as_str(), ended.visit, ended.cause.as_deref()),
        (TODAY, Some(visit), Some("spark-plug-worn"))
    );

    // A new trouble remembers it; the trouble itself is not its own past.
    let plugs = |view: &TroubleView| {
        let plugs = view.suspects.iter().find(|suspect| suspect.cause == "spark-plug-worn").unwrap();
        (plugs.chance, plugs.before)
    };
    let (again, had) = plugs(&case.view(shows(&["rough-idle"])));
    let (book, trouble, subject) = (case.book.clone(), shows(&["rough-idle"]), Some(subject));
    let itself = Request::Trouble { book, trouble, subject, here: HereForm::default() };
    let Response::Trouble(itself) = case.door.ask(itself).unwrap() else { panic!() };
    let (first, had_first) = plugs(&itself);
    assert!(had && !had_first && again > first, "{again} against {first}");
}

#[test]
fn an_open_trouble_stands_before_one_that_has_ended() {
    let mut case = case();
    let on = |day: &str, end| TroubleForm { day: day.to_owned(), end, ..shows(&["rough-idle"]) };
    case.write(on("2026-05-01", None));
    case.write(on("2026-05-09", Some(EndForm::default())));
    let days = |lines: Vec<TroubleLine>| lines.into_iter().map(|line| line.day).collect::<Vec<_>>();
    assert_eq!(days(case.troubles().troubles), ["2026-05-01", "2026-05-09"]);
    assert_eq!(days(case.today().troubles), ["2026-05-01"], "Today reminds of what is still open");
}

#[test]
fn a_code_that_was_cleared_is_not_mended_and_comes_back() {
    let mut case = case();
    let read = |day: &str, reading: &str, text: &str, cleared| ScanForm {
        reading: reading.to_owned(),
        cleared,
        ..scan(day, text)
    };
    let mut trouble = TroubleForm {
        day: "2026-03-01".to_owned(),
        scans: vec![read("2026-03-01", "88000", "43 01 04 20", true)],
        ..TroubleForm::default()
    };
    let subject = case.write(trouble.clone());
    let life = code(&case.troubles().codes, "P0420").life.clone().unwrap();
    assert_eq!((life.standing.as_str(), life.times), ("cleared", 1));
    assert_eq!(life.warnings, ["not-mended", "readiness-lost"]);

    trouble.scans.push(read("2026-03-20", "88400", "43 01 04 20", false));
    case.amend(&subject, trouble);
    let life = code(&case.troubles().codes, "P0420").life.clone().unwrap();
    let back = &life.returns[0];
    assert_eq!((life.standing.as_str(), back.was_cleared, back.after.days), ("present", true, 19));
    assert_eq!(back.after.distance.unwrap().count, 400);
    let asked = Request::Codes { text: "P0420".to_owned(), book: Some(case.book.clone()) };
    let Response::Codes(asked) = case.door.ask(asked).unwrap() else { panic!() };
    assert_eq!(asked.codes[0].life.as_ref().unwrap().times, 2);
    let turns = serde_json::to_value(&life.turns).unwrap();
    let is: Vec<_> = turns.as_array().unwrap().iter().map(|turn| turn["is"].clone()).collect();
    assert_eq!(is, ["cleared", "back"]);
    assert_eq!(turns[1]["back"]["day"], "2026-03-20");
}

#[test]
fn the_reading_of_a_trouble_is_held_against_the_others() {
    let mut case = case();
    let trouble = TroubleForm { reading: "91".to_owned(), ..shows(&["rough-idle"]) };
    let request = |keep| Request::WriteTrouble { book: case.book.clone(), trouble: trouble.clone(), keep };
    let (asked, kept) = (request(false), request(true));
    let refusal = case.door.ask(asked).unwrap_err();
    assert_eq!((refusal.code.as_str(), refusal.can_keep), ("reading-lower", true));
    assert_eq!(refusal.field.as_deref(), Some("trouble.reading"));
    case.written(kept);
}

#[test]
fn a_trouble_is_a_line_of_the_book_that_can_be_found_and_struck_out() {
    let mut case = case();
    let subject = case.write(TroubleForm { words: "Whistles uphill".to_owned(), ..TroubleForm::default() });
    let filter = door::LineFilter { text: Some("whistles".to_owned()), ..door::LineFilter::default() };
    let Response::Lines(view) = case.door.ask(Request::Lines { book: case.book.clone(), filter }).unwrap()
    else {
        panic!()
    };
    assert_eq!(view.lines.len(), 1);
    assert!(
        matches!(&view.lines[0].says, LineContent::Trouble { trouble } if trouble.words == "Whistles uphill")
    );
    let (book, why) = (case.book.clone(), "never mind".to_owned());
    case.written(Request::StrikeOut { book, subject, why });
    assert!(case.troubles().troubles.is_empty());
}

#[test]
fn the_brief_tells_a_workshop_what_is_known_and_names_no_cause() {
    let mut case = case();
    case.visit("2026-05-28", PLUGS);
    case.visit("2025-05-28", PLUGS);
    // A frame of service 02: 42 05 00 7B is coolant at 83 °C, 123 - 40 (SAE J1979, service 02 PID 05).
    let frozen = "43 01 01 71\n42 02 00 01 71\n42 05 00 7B";
    let subject = case.write(TroubleForm {
        words: "Shakes at the lights".to_owned(),
        when: "Warm, after ten minutes".to_owned(),
        absent: keys(&["white-smoke"]),
        scans: vec![scan("2026-05-30", frozen), scan("2026-05-31", frozen)],
        answers: vec![answered("look-at-plugs", AnswerKey::NotFound)],
        asked: "Please find the leak".to_owned(),
        ..shows(&["rough-idle"])
    });
    let brief = case.brief(&subject);
    assert_eq!(
        (brief.words.as_str(), brief.when.as_str()),
        ("Shakes at the lights", "Warm, after ten minutes")
    );
    assert_eq!(brief.codes.iter().map(|code| code.code.as_str()).collect::<Vec<_>>(), ["P0171"]);
    assert!(brief.codes.iter().all(|code| code.causes.is_empty()), "no diagnosis");
    assert_eq!(brief.frames.len(), 1);
    assert_eq!(brief.frames[0].seen.day, "2026-05-30");
    assert_eq!(brief.frames[0].frame.code.as_deref(), Some("P0171"));
    let coolant = &brief.frames[0].frame.values[0];
    assert_eq!((coolant.value.as_str(), coolant.unit.as_str()), ("83", "°C"));
    assert_eq!(brief.checked, [answered("look-at-plugs", AnswerKey::NotFound)]);
    assert_eq!(brief.work.iter().map(|work| work.day.as_str()).collect::<Vec<_>>(), ["2026-05-28"]);
    assert_eq!(brief.reading.unwrap().reading.count, 90_000);
}

/// Clearing sets all tests of the car back, so that what was ready before it says nothing any more. The bytes are those of
/// SAE J1979, service 01 PID 01: no lamp, no code, every test finished.
#[test]
fn the_brief_tells_no_readiness_of_before_a_clearing() {
    let mut case = case();
    let ready = |day: &str| scan(day, "41 01 00 07 E5 00");
    let cleared = |day: &str| ScanForm { cleared: true, ..ready(day) };
    let mut told = |scans: Vec<ScanForm>| {
        let subject = case.write(TroubleForm { scans, ..shows(&["rough-idle"]) });
        case.brief(&subject).readiness.map(|readiness| readiness.seen.day)
    };
    assert_eq!(told(vec![ready("2026-05-01"), ready("2026-05-02")]).as_deref(), Some("2026-05-02"));
    assert_eq!(told(vec![ready("2026-05-01"), cleared("2026-05-02")]), None);
    assert_eq!(told(vec![cleared("2026-05-02"), ready("2026-05-09")]).as_deref(), Some("2026-05-09"));
    assert_eq!(told(vec![ready("2026-05-09"), cleared("2026-05-02")]).as_deref(), Some("2026-05-09"));
    let by_the_car = scan("2026-05-10", "44");
    assert_eq!(told(vec![ready("2026-05-09"), by_the_car]), None);
}

#[test]
fn the_brief_knows_what_was_cleared_for_another_trouble() {
    let mut case = case();
    let ready = scan("2026-05-01", "43 01 71\n41 01 00 07 E5 00");
    let told = TroubleForm { day: "2026-05-01".to_owned(), scans: vec![ready], ..TroubleForm::default() };
    let subject = case.write(told);
    assert_eq!(case.brief(&subject).readiness.unwrap().units[0].allowed, Some(1), "a car of 2016");
    let cleared = ScanForm { cleared: true, ..scan("2026-05-20", "") };
    case.write(TroubleForm { scans: vec![cleared], ..shows(&["rough-idle"]) });
    let brief = case.brief(&subject);
    assert_eq!((brief.readiness, brief.cleared.as_deref()), (None, Some("2026-05-20")));
}

#[test]
fn a_guide_shows_the_cars_own_number_and_marks_what_is_typical() {
    let mut case = case();
    let known = |view: &GuideView, key: &str| {
        view.values.iter().find(|value| value.key == key).map(|value| value.known.clone()).unwrap()
    };
    let before = case.guide("oil-and-filter");
    assert_eq!(known(&before, "drain-plug-torque"), KnownView::Handbook);
    assert!(before.cautions.iter().any(|caution| caution.one_by_one));
    assert!(before.cautions.iter().all(|caution| !caution.sources.is_empty()));
    let oil = |item: &ItemView| matches!(item, ItemView::Catalogue { number: 1, .. });
    assert!(before.guide.does.iter().any(oil));
    let wheels = case.guide("wheel-change");
    assert!(matches!(known(&wheels, "wheel-torque"), KnownView::Typical { .. }));

    let values =
        [("drain-plug-torque".to_owned(), " 27 ".to_owned()), ("oil-grade".to_owned(), String::new())];
    let vehicle = VehicleForm { values: values.into(), ..car() };
    case.written(Request::ChangeVehicle { book: case.book.clone(), vehicle });
    let after = case.guide("oil-and-filter");
    let own = |text: &str, unit: Option<&str>| KnownView::Own {
        text: text.to_owned(),
        unit: unit.map(str::to_owned),
    };
    assert_eq!(known(&after, "drain-plug-torque"), own("27", Some("N·m")));
    for typed in ["20 lbf·ft", "27 Nm"] {
        let values = [("drain-plug-torque".to_owned(), typed.to_owned())].into();
        let (book, vehicle) = (case.book.clone(), VehicleForm { values, ..car() });
        case.written(Request::ChangeVehicle { book, vehicle });
        let guide = case.guide("oil-and-filter");
        assert_eq!(
            known(&guide, "drain-plug-torque"),
            own(typed, None),
            "a second unit would be a wrong torque"
        );
    }
    let values = [("drain-plug-torque".to_owned(), "27".to_owned())].into();
    let (book, vehicle) = (case.book.clone(), VehicleForm { values, ..car() });
    case.written(Request::ChangeVehicle { book, vehicle });
    let sheet = case.sheet();
    assert_eq!(sheet.form.values, [("drain-plug-torque".to_owned(), "27".to_owned())].into());
    assert!(sheet.values.iter().any(|value| value.key == "oil-grade" && value.known == KnownView::Handbook));
}

#[test]
fn a_job_names_its_guide_wherever_it_is_planned() {
    let mut case = case();
    let Response::Bay(bay) = case.door.ask(Request::Bay { book: case.book.clone() }).unwrap() else {
        panic!()
    };
    let guide = |number| {
        let is =
            |item: &ItemView| matches!(item, ItemView::Catalogue { number: other, .. } if *other == number);
        bay.jobs.iter().find(|job| is(&job.item)).unwrap().guide.as_deref()
    };
    assert_eq!(guide(PLUGS), Some("spark-plugs"));
    for key in bay.jobs.iter().filter_map(|job| job.guide.as_ref()) {
        assert!(bay.guides.iter().any(|line| line.key == *key), "{key} is a guide for this car");
    }
    let oil = VisitForm {
        day: "2016-07-01".to_owned(),
        items: vec![ItemForm::Catalogue(OIL)],
        ..VisitForm::default()
    };
    case.written(Request::RecordVisit { book: case.book.clone(), visit: oil, keep: false });
    let items = case.today().visits.into_iter().flat_map(|visit| visit.items);
    assert!(items.filter_map(|item| item.guide).any(|guide| guide == "oil-and-filter"));
}

#[test]
fn a_car_has_the_guides_of_its_kind() {
    let mut case = case();
    let guides = |case: &mut Case| {
        let Response::Guides(view) = case.door.ask(Request::Guides { book: case.book.clone() }).unwrap()
        else {
            panic!()
        };
        view.guides.into_iter().map(|guide| guide.key).collect::<Vec<_>>()
    };
    let petrol = guides(&mut case);
    let vehicle = VehicleForm { engine: "diesel".to_owned(), ..car() };
    case.written(Request::ChangeVehicle { book: case.book.clone(), vehicle });
    let diesel = guides(&mut case);
    assert!(petrol.contains(&"spark-plugs".to_owned()) && !diesel.contains(&"spark-plugs".to_owned()));
    assert!(diesel.contains(&"glow-plugs".to_owned()) && !petrol.contains(&"glow-plugs".to_owned()));
}
