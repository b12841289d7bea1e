"""Parts of tools/make_demo_survey.py: the invented estuary survey of test-data/demo."""
