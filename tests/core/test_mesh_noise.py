"""How well a survey repeats is kept beside its mesh, and used where its volume is asked later."""

from __future__ import annotations

import json
from pathlib import Path

import numpy as np
import pytest

from plugin.core.__main__ import main
from plugin.core.handover.mesh_noise import MeshNoise, noise_file, read_mesh_noise, write_mesh_noise


def walked(path: Path, noise: float, seed: int) -> Path:
    """Two walks over a site of 40 m, across each other, with this noise."""
    random = np.random.default_rng(seed)
    along, rows = np.arange(0, 40.1, 0.8), np.arange(0, 40.1, 4.0)
    u = np.concatenate([along if k % 2 == 0 else along[::-1] for k in range(len(rows))])
    v = np.repeat(rows, len(along))
    x, y = np.append(u, v), np.append(v, u)
    z = 100 + 0.02 * x + 0.3 * np.sin(y / 9) + random.normal(0, noise, len(x))
    rows_of = (f"p{i},{500000 + a:.4f},{5800000 + b:.4f},{c:.4f}" for i, (a, b, c) in enumerate(zip(x, y, z)))
    path.write_text("name,easting,northing,height\n" + "\n".join(rows_of) + "\n", encoding="utf-8")
    return path


def job(survey: Path, folder: Path, *more: str) -> int:
    return main([str(survey), "--crs", "EPSG:25832", "--interval", "0.5", "--out", str(folder), *more])


@pytest.fixture(scope="module")
def earlier(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("earlier")
    assert job(walked(folder / "walk.csv", 0.03, 1), folder / "out") == 0
    return folder / "out" / "surface.2dm"


def test_the_job_keeps_it_beside_the_mesh(earlier: Path) -> None:
    noise, said = read_mesh_noise(earlier)
    assert said == ()
    assert noise is not None
    assert np.hypot(noise.sigma, noise.drift) == pytest.approx(0.03, rel=0.25)
    assert noise_file(earlier).name in (earlier.parent / "checksums.sha256").read_text(encoding="utf-8")


def test_a_volume_rests_on_the_noise_of_either_survey(
    earlier: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    later = walked(tmp_path / "walk.csv", 0.008, 2)
    assert job(later, tmp_path / "out", "--since", str(earlier)) == 0
    said = capsys.readouterr().out
    noise = json.loads(noise_file(earlier).read_text(encoding="utf-8"))
    assert f"surface.noise.json beside it holds it: {1000 * noise['sigma_m']:.0f} mm" in said
    # What is said goes first.
    assert job(later, tmp_path / "out", "--since", str(earlier), "--other-sigma", "0.005") == 0
    assert "surface.noise.json" not in capsys.readouterr().out.split("Written")[0]


@pytest.mark.parametrize("wrong", ["other mesh", "no numbers", "no json", "below 0"])
def test_what_does_not_belong_to_the_mesh_is_not_used_and_told(tmp_path: Path, wrong: str) -> None:
    mesh = tmp_path / "surface.2dm"
    mesh.write_text("MESH2D\n", encoding="utf-8")
    write_mesh_noise(mesh, MeshNoise(0.012, 0.004))
    assert read_mesh_noise(mesh) == (MeshNoise(0.012, 0.004), ())
    told = noise_file(mesh).read_text(encoding="utf-8")
    if wrong == "other mesh":
        mesh.write_text("MESH2D\nND 1 0 0 0\n", encoding="utf-8")
    else:
        changed = {"no numbers": told.replace("0.012", "null"), "no json": "{", "below 0": told.replace("0.012", "-1")}
        noise_file(mesh).write_text(changed[wrong], encoding="utf-8")
    noise, said = read_mesh_noise(mesh)
    assert noise is None
    assert [one.text.code for one in said] == ["mesh_noise.stale"]


def test_times_of_the_nodes_come_back(tmp_path: Path) -> None:
    """To the millisecond, of nodes that are no points none."""
    mesh = tmp_path / "surface.2dm"
    mesh.write_text("MESH2D\n", encoding="utf-8")
    time = 1744182874.8 + np.array([0.0, 0.5004, np.nan, 3601.25])
    write_mesh_noise(mesh, MeshNoise(0.012, 0.004, time))
    noise, said = read_mesh_noise(mesh)
    assert said == ()
    assert noise is not None
    np.testing.assert_allclose(noise.time, time, rtol=0, atol=0.0006)
    assert noise.of_nodes(np.array([3, 2])).time == pytest.approx([time[3], np.nan], abs=0.001, nan_ok=True)
    assert noise.of_nodes(np.array([2])).time is None
    told = noise_file(mesh).read_text(encoding="utf-8")
    noise_file(mesh).write_text(told.replace("0.5", "[0.5]"), encoding="utf-8")
    assert [one.text.code for one in read_mesh_noise(mesh)[1]] == ["mesh_noise.stale"]


def test_a_stale_file_goes_when_nothing_is_known(tmp_path: Path) -> None:
    mesh = tmp_path / "surface.2dm"
    mesh.write_text("MESH2D\n", encoding="utf-8")
    write_mesh_noise(mesh, MeshNoise(0.012, 0.004))
    assert write_mesh_noise(mesh, None) is None
    assert read_mesh_noise(mesh) == (None, ())
