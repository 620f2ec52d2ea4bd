"""The main job: from a survey file to surface, contours, answers and a report."""
