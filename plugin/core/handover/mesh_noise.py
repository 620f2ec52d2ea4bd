"""How well the heights behind a mesh repeat: a file ``NAME.noise.json`` beside the mesh, which has no place for it.

It holds the name of the mesh, the SHA-256 of its bytes, and two standard deviations in metres: ``sigma_m``, new at
every point, and ``drift_m``, which points recorded within minutes share.
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from pathlib import Path
from typing import Optional, Tuple, Union

from ..files import replace_file
from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from .checksums import digest

NOT_ITS_NOISE = Text(
    "mesh_noise.stale",
    QT_TRANSLATE_NOOP(
        "core",
        "{file} does not belong to {mesh} as it is now, or cannot be read: what it says of noise is not used. Write "
        "the mesh anew, or say how well its heights repeat.",
    ),
    weight=2,
)
OWN_NOISE = Text(
    "mesh_noise.own",
    QT_TRANSLATE_NOOP(
        "core",
        "{name} is taken with the noise of its own survey, as {file} beside it holds it: {sigma:.0f} mm new at every "
        "point and {drift:.0f} mm of drift.",
    ),
)
_MOST = 100_000  # bytes
_LARGEST = 100.0  # metres


@dataclass(frozen=True)
class MeshNoise:
    """Standard deviations in metres: ``sigma``, new at every point, and ``drift``, shared within minutes."""

    sigma: float
    drift: float


def noise_file(mesh: Union[str, Path]) -> Path:
    return Path(mesh).with_suffix(".noise.json")


def write_mesh_noise(mesh: Union[str, Path], noise: Optional[MeshNoise]) -> Optional[Path]:
    """Write the file beside the ``mesh``, which is written already; remove a stale one where nothing is known.

    Returns the file written, or None. Raises SurveyError when it cannot be written.
    """
    target = noise_file(mesh)
    if noise is None:
        target.unlink(missing_ok=True)
        return None
    told = {
        "mesh": Path(mesh).name,
        "sha256": digest(mesh).sha256,
        "sigma_m": round(noise.sigma, 5),
        "drift_m": round(noise.drift, 5),
    }
    with replace_file(target) as temporary:
        Path(temporary).write_text(json.dumps(told, indent=1) + "\n", encoding="utf-8")
    return target


def read_mesh_noise(mesh: Union[str, Path]) -> Tuple[Optional[MeshNoise], Tuple[Message, ...]]:
    """What the file beside the ``mesh`` says, None where there is none; and what is to be told of it."""
    target = noise_file(mesh)
    if not target.is_file():
        return None, ()
    try:
        if target.stat().st_size > _MOST:
            raise ValueError
        told = json.loads(target.read_text(encoding="utf-8"))
        noise = MeshNoise(float(told["sigma_m"]), float(told["drift_m"]))
        if told["sha256"] != digest(mesh).sha256 or not all(0 <= one <= _LARGEST for one in (noise.sigma, noise.drift)):
            raise ValueError
    except (OSError, ValueError, TypeError, KeyError, RecursionError):
        return None, (message(NOT_ITS_NOISE, file=target.name, mesh=Path(mesh).name),)
    return noise, ()
