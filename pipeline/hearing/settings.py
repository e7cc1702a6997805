"""How memos are heard: one typed, frozen set of settings, from flags, then the environment, then defaults."""

from __future__ import annotations

import os
from typing import Literal

from pydantic import BaseModel, ConfigDict, Field, ValidationError

from pipeline.errors import SettingsError

PREFIX = "CLINCHBOOK_"


class HearingSettings(BaseModel):
    """Settings of intake and recogniser. ``threads`` 0 means all cores; ``max_minutes`` is decoded length."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    model: str = Field(default="base", min_length=1, description="the name of a model or a folder with one")
    threads: int = Field(default=0, ge=0, le=256, description="a whole number of cores from 0 (all) to 256")
    device: Literal["cpu", "cuda", "auto"] = Field(default="cpu", description="cpu, cuda or auto")
    compute_type: Literal["int8", "int8_float32", "int8_float16", "int16", "float16", "float32", "default"] = Field(
        default="int8",
        description="int8, int8_float32, int8_float16, int16, float16, float32 or default",
    )
    beam_size: int = Field(default=2, ge=1, le=10, description="a whole number from 1 to 10")
    max_minutes: float = Field(default=60, gt=0, le=24 * 60, description="minutes above 0, at most 1440")
    allow_download: bool = Field(default=False, description="yes or no")
    bias: bool = Field(default=True, description="yes or no")
    vad: bool = Field(default=True, description="yes or no")
    verify: bool = Field(default=True, description="yes or no")
    adapter: bool = Field(default=True, description="yes or no")

    @classmethod
    def from_environment(cls, **flags: object) -> HearingSettings:
        """Settings from ``flags`` (None means not given), then ``CLINCHBOOK_...`` variables, then defaults.

        Raises SettingsError, naming the setting, for an unknown flag or a value outside what is allowed.
        """
        given: dict[str, object] = {}
        origin: dict[str, str] = {}
        for name in cls.model_fields:
            variable = PREFIX + name.upper()
            if os.environ.get(variable, "") != "":
                given[name], origin[name] = os.environ[variable], variable
        for name, value in flags.items():
            if value is not None:
                given[name], origin[name] = value, name
        try:
            return cls.model_validate(given)
        except ValidationError as error:
            raise SettingsError(_sentence(error, origin)) from error


def _sentence(error: ValidationError, origin: dict[str, str]) -> str:
    first = error.errors()[0]
    name = str(first["loc"][0])
    field = HearingSettings.model_fields.get(name)
    if field is None:
        return f"There is no setting called {name!r}."
    return f"The setting {origin[name]} is {first['input']!r}, but it must be {field.description}."
