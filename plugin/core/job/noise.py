"""What the survey says of its own points."""

from __future__ import annotations

from ..report.results import JobResult

USUAL_NOISE = 0.015  # metres, where no points repeat (common practice of such receivers, no source)


def point_noise(result: JobResult) -> float:
    """Noise of a point's height (m, one standard deviation) as repeated points tell it; the usual one where none do."""
    noise = None if result.check is None else result.check.noise
    return noise.total if noise is not None and noise.total > 0 else USUAL_NOISE
