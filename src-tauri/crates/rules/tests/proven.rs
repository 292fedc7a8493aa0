//! Whether the plans of cars as they are met with are certain to be the best.
#![allow(clippy::unwrap_used, missing_docs)]

use rules::upkeep::{Catalogue, due};

use cars::{Car, due_lines, ten, ten_of_least_lines};

// The bench measures more of them than is asked here.
#[allow(dead_code)]
#[path = "../benches/cars/mod.rs"]
mod cars;

#[test]
fn the_plans_of_ten_cars_of_twenty_years_are_proven() {
    let catalogue = Catalogue::shipped().unwrap();
    for books in [ten_of_least_lines(catalogue), ten(catalogue, usize::MAX)] {
        assert!(due_lines(catalogue, &books).iter().all(|lines| *lines >= 50));
        for (number, book) in books.iter().enumerate() {
            let car = Car::load(catalogue, book);
            let lines = due(&car.facts());
            let (plan, jobs) = (car.visits(&lines), car.jobs(&lines).len());
            println!("car {number}: {} lines, {jobs} jobs, {} visits", lines.len(), plan.visits.len());
            assert!(plan.proven, "car {number}: {jobs} jobs");
        }
    }
}
