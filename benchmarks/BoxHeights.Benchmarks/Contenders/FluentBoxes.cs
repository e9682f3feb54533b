using System.Collections.Generic;
using FluentValidation;
using FluentValidation.Results;

namespace BoxHeights.Benchmarks;

/// <summary>A general-purpose validation library, one validator a box with one rule a row. It gets flat objects and the shared level for nothing but the counting.</summary>
internal sealed class FluentBoxes : Contender
{
    private readonly BoxCase[][] houses;
    private readonly BoxValidator validator = new();
    private readonly ModeTable modes = new();

    public FluentBoxes(Workload workload)
        : base("FluentValidation per box") => houses = workload.Cases;

    public override int Judge(int house)
    {
        FindLevels(houses[house]);
        int found = 0;
        foreach (BoxCase box in houses[house])
        {
            found += validator.Validate(box).Errors.Count;
        }

        return found;
    }

    public override IEnumerable<(string Box, string Rule)> Find(int house)
    {
        FindLevels(houses[house]);
        foreach (BoxCase box in houses[house])
        {
            foreach (ValidationFailure failure in validator.Validate(box).Errors)
            {
                yield return (box.Id, failure.ErrorCode);
            }
        }
    }

    private void FindLevels(BoxCase[] boxes)
    {
        modes.Clear();
        foreach (BoxCase box in boxes)
        {
            if (box.Purpose != 3)
            {
                modes.Add(box.Group, (int)box.Center);
            }
        }

        foreach (BoxCase box in boxes)
        {
            box.Level = box.Purpose == 3 ? 0 : modes.Levels[box.Group];
        }
    }

    private sealed class BoxValidator : AbstractValidator<BoxCase>
    {
        public BoxValidator()
        {
            RuleFor(box => box.Center).Must(PlainChecks.Reach).WithErrorCode("ada-reach");
            RuleFor(box => box.Center).Must(PlainChecks.SwitchReach).WithErrorCode("switch-reach");
            RuleFor(box => box.Center).Must(PlainChecks.Counts).WithErrorCode("counts-as-required");
            RuleFor(box => box.Center).Must(PlainChecks.AboveCounter).WithErrorCode("counter-receptacle");
            RuleFor(box => box.Center).Must(PlainChecks.Seam).WithErrorCode("board-seam");
            RuleFor(box => box.Center).Must(PlainChecks.HabitOrForced).WithErrorCode("general-height").When(box => box.Purpose == 0);
            RuleFor(box => box.Center).Must(PlainChecks.HabitOrForced).WithErrorCode("switch-height").When(box => box.Purpose == 1);
            RuleFor(box => box.Center).Must(PlainChecks.HabitOrForced).WithErrorCode("counter-height").When(box => box.Purpose == 2);
            RuleFor(box => box.Center).Must(PlainChecks.Asked).WithErrorCode("specified-height");
            RuleFor(box => box.Center).Must(PlainChecks.Level).WithErrorCode("uniform-level");
            RuleFor(box => box).Must(PlainChecks.Fill).WithErrorCode("box-fill");
        }
    }
}
