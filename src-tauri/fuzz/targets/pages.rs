//! Any bytes at all are a document of pages or one sentence.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| {
    if let Err(refused) = paper::pages(bytes) {
        assert!(!refused.to_string().contains('\n'));
    }
});
