namespace BoxHeights;

/// <summary>Why nothing is offered that would mend a cause: whether it is worth to look again, to change something first, or to look elsewhere.</summary>
public enum NoRemedyReason
{
    /// <summary>It was looked for, and nothing was found: whatever was tried leaves the finding or brings another.</summary>
    NothingFound = 0,

    /// <summary>It wasn't looked for to the end: <see cref="EvaluatorOptions.MostTriesForACause"/> was reached before anything was found. More tries may find something.</summary>
    OutOfTries = 1,

    /// <summary>It wasn't looked for: the box has to stay, because it is pinned, was there before or is no part of this work.</summary>
    Stays = 2,

    /// <summary>No change of boxes that can be carried out here mends it: the text says what would, such as a thicker conductor, joint compound round the box or another kind of box.</summary>
    ByOtherMeans = 3,

    /// <summary>Something has to be found out first: <see cref="Finding.Needs"/> says what, and the text too.</summary>
    NotKnown = 4,

    /// <summary>The rule couldn't be judged at all: <see cref="Cause.NotJudgedBecause"/> says why, and there is no entry among the remedies.</summary>
    NotJudged = 5,

    /// <summary>The description contradicts itself: it is what has to be mended, as the finding says, and there is no entry among the remedies.</summary>
    FaultyDescription = 6,
}
