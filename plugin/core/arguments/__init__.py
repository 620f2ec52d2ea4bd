"""The command line: its options, and what they ask of the main job."""
