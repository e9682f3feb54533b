namespace BoxHeights;

/// <summary>How well a stud layout is known.</summary>
public enum StudKnowledge
{
    /// <summary>Assumed from a drawing or from habit: no stud number is printed.</summary>
    Assumed = 0,

    /// <summary>Stated by whoever framed it.</summary>
    Declared = 1,

    /// <summary>Measured on site.</summary>
    Measured = 2,
}
